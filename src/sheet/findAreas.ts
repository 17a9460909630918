import type { Cell } from "./cell";
import type { ColumnChoice } from "./columnChoice";
import { isDayNote } from "./isDayNote";
import { isFilledCell } from "./isFilledCell";
import { readHeading } from "./readHeading";
import { resultArea } from "./resultArea";
import { sameHeading } from "./sameHeading";
import type { SheetSnapshot } from "./sheetSnapshot";
import { tableKinds } from "./tableKinds";

/** An area of a sheet's values, as indices into them; the first row is its heading row. */
export interface SheetArea {
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

/**
 * The areas outside the host's own tables that begin with a row of headings.
 *
 * Areas side by side are parted by a blank column. A heading row begins the sheet, or follows a blank row or a title; the area runs
 * on, over blank rows, to the next heading row, the next result of a formula, or the end. Results of formulas are no areas.
 * Headings chosen by hand count as understood.
 */
export function findAreas(sheet: SheetSnapshot, chosen: readonly ColumnChoice[] = []): readonly SheetArea[] {
  const free = freeCells(sheet);
  return columnBands(free).flatMap(({ from, until }) => areasInBand(free, sheet, from, until, chosen));
}

type Grid = readonly (readonly Cell[])[];

/** The sheet's values with the host's tables taken out. */
function freeCells(sheet: SheetSnapshot): Grid {
  if (sheet.tables.length === 0) return sheet.values;
  return sheet.values.map((cells, index) => {
    const row = index + sheet.firstRow;
    const across = sheet.tables.filter((table) => row >= table.row && row < table.row + table.rowCount);
    if (across.length === 0) return cells;
    return cells.map((cell, place) => {
      const column = place + sheet.firstColumn;
      return across.some((table) => column >= table.column && column < table.column + table.columnCount) ? null : cell;
    });
  });
}

interface Band {
  readonly from: number;
  readonly until: number;
}

/** Runs of columns that hold something, parted by columns that are blank from top to bottom. */
function columnBands(free: Grid): readonly Band[] {
  const isUsed: boolean[] = [];
  for (const row of free) {
    for (let column = 0; column < row.length; column += 1) {
      if (isUsed[column] !== true && isFilledCell(row[column])) isUsed[column] = true;
    }
  }
  return runsOf(isUsed.length, (column) => isUsed[column] === true);
}

function runsOf(length: number, holds: (index: number) => boolean): Band[] {
  const runs: Band[] = [];
  for (let from = 0; from < length; from += 1) {
    if (!holds(from)) continue;
    let until = from + 1;
    while (until < length && holds(until)) until += 1;
    runs.push({ from, until });
    from = until;
  }
  return runs;
}

function areasInBand(
  free: Grid,
  sheet: SheetSnapshot,
  from: number,
  until: number,
  chosen: readonly ColumnChoice[],
): SheetArea[] {
  const starts: { readonly row: number; readonly isHeading: boolean }[] = [];
  const titles = new Set<number>();
  let mayStart = true;
  for (let row = 0; row < free.length; row += 1) {
    const filled = filledUpTo(free[row]!, from, until, 2);
    if (filled === 0) {
      mayStart = true;
      continue;
    }
    const result = resultArea(sheet.formulas, free, row, from, until);
    if (result !== null) {
      starts.push({ row, isHeading: false });
      row += result.rowCount - 1;
      mayStart = true;
      continue;
    }
    if (mayStart && looksLikeHeadings(free[row]!.slice(from, until), chosen)) {
      starts.push({ row, isHeading: true });
      mayStart = false;
    } else if (mayStart && filled === 1) titles.add(row);
    else mayStart = false;
  }
  return starts.flatMap(({ row, isHeading }, index) => {
    if (!isHeading) return [];
    let end = starts[index + 1]?.row ?? free.length;
    // The title of what follows belongs to what follows, and a note of the day to nothing above it.
    const isOutside = (at: number): boolean =>
      titles.has(at) || filledUpTo(free[at]!, from, until, 1) === 0 || isDayNote(free[at]!, from, until);
    while (end > row + 1 && isOutside(end - 1)) end -= 1;
    return areasUnder(free, row, end, from, until);
  });
}

/** The areas side by side under one row of headings: parted where heading and column are both blank. */
function areasUnder(free: Grid, row: number, end: number, from: number, until: number): SheetArea[] {
  const isUsed = (column: number): boolean => {
    for (let at = row; at < end; at += 1) if (isFilledCell(free[at]![column])) return true;
    return false;
  };
  return runsOf(until, (column) => column >= from && isUsed(column)).map((run) => ({
    row,
    column: run.from,
    rowCount: end - row,
    columnCount: run.until - run.from,
  }));
}

function filledUpTo(cells: readonly Cell[], from: number, until: number, enough: number): number {
  let count = 0;
  for (let column = from; column < until && count < enough; column += 1) if (isFilledCell(cells[column])) count += 1;
  return count;
}

/** At least two headings of one kind of table, and with them more than a third of what the row holds, all or most of it text. */
function looksLikeHeadings(cells: readonly Cell[], chosen: readonly ColumnChoice[]): boolean {
  const filled = cells.filter(isFilledCell);
  const texts = filled.filter((cell) => typeof cell === "string");
  const isChosen = (text: string): boolean =>
    chosen.some(({ heading }) => heading !== null && sameHeading(heading, text));
  const counts = tableKinds.map(
    (kind) => texts.filter((text) => isChosen(text) || readHeading(kind, text) !== null).length,
  );
  const understood = Math.max(...counts);
  return (
    understood >= 2 &&
    understood * 3 > filled.length &&
    (texts.length === filled.length || understood * 2 > filled.length)
  );
}
