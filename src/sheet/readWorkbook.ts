import type { AreaKind, AreaKinds } from "./areaKinds";
import { assignColumns } from "./assignColumns";
import { choicesOn } from "./choicesOn";
import { chosenKind } from "./chosenKind";
import type { ColumnChoices, KindColumnChoice } from "./columnChoices";
import { findAreas, type SheetArea } from "./findAreas";
import { findDataRows } from "./findDataRows";
import { guessTableKind } from "./guessTableKind";
import { headingTexts } from "./headingTexts";
import { resultArea } from "./resultArea";
import type { SheetSnapshot, WorkbookSnapshot } from "./sheetSnapshot";
import type { SheetTable } from "./sheetTable";
import type { TableKind } from "./tableKind";

/** An area with headings that is no table the tool can read, and why: no kind fits, or two fit equally well. */
export interface UnreadArea {
  readonly sheetId: string;
  readonly sheetName: string;
  /** The host's name of the table, or null where it has none. */
  readonly tableName: string | null;
  /** Sheet row and column (from 0) of its first cell. */
  readonly row: number;
  readonly column: number;
  readonly headings: readonly string[];
  readonly kinds: readonly TableKind[];
}

/** The tables of a workbook, and the areas that look like tables and are none. */
export interface WorkbookTables {
  /** In the order of the sheets, and on a sheet from the top. */
  readonly tables: readonly SheetTable[];
  readonly unread: readonly UnreadArea[];
  /** Areas that were set aside by hand. */
  readonly leftOut: readonly UnreadArea[];
}

/**
 * The tables of a workbook: the host's own tables, and areas under a row of headings.
 *
 * Choices made by hand (kept in the workbook) go before the vocabulary and before the guess of a kind. A heading row must name enough fields of one kind;
 * what names too few, or as many of two kinds, comes back as unread. A result that spills from a formula is no table.
 */
export function readWorkbook(
  workbook: WorkbookSnapshot,
  choices: ColumnChoices = {},
  kinds: AreaKinds = {},
): WorkbookTables {
  const tables: SheetTable[] = [];
  const unread: UnreadArea[] = [];
  const leftOut: UnreadArea[] = [];
  for (const sheet of workbook.sheets) {
    const chosen = Object.hasOwn(choices, sheet.name) ? choices[sheet.name]! : [];
    const kindsGiven = Object.hasOwn(kinds, sheet.name) ? kinds[sheet.name]! : [];
    for (const named of areasOf(sheet, chosen)) {
      const read = readArea(sheet, named, chosen, kindsGiven);
      if (read?.table !== undefined) tables.push(read.table);
      if (read?.unread !== undefined) unread.push(read.unread);
      if (read?.leftOut !== undefined) leftOut.push(read.leftOut);
    }
  }
  return { tables, unread, leftOut };
}

interface NamedArea {
  readonly area: SheetArea;
  readonly tableName: string | null;
}

function areasOf(sheet: SheetSnapshot, chosen: readonly KindColumnChoice[]): readonly NamedArea[] {
  const named = sheet.tables.map(({ name, row, column, rowCount, columnCount }) => ({
    area: { row: row - sheet.firstRow, column: column - sheet.firstColumn, rowCount, columnCount },
    tableName: name,
  }));
  const others = findAreas(sheet, chosen).map((area) => ({ area, tableName: null }));
  return [...named, ...others].sort(
    (one, other) => one.area.row - other.area.row || one.area.column - other.area.column,
  );
}

function readArea(
  sheet: SheetSnapshot,
  { area, tableName }: NamedArea,
  sheetChoices: readonly KindColumnChoice[],
  kindsGiven: readonly AreaKind[],
): { table?: SheetTable; unread?: UnreadArea; leftOut?: UnreadArea } | null {
  const until = area.column + area.columnCount;
  const rows = sheet.values.slice(Math.max(area.row, 0), area.row + area.rowCount);
  const isWhole = area.column === 0 && rows.every((row) => row.length === area.columnCount);
  const cells = isWhole ? rows : rows.map((row) => row.slice(area.column, until));
  if (cells[0] === undefined) return null;
  const allFormulas = sheet.formulas.slice(area.row, area.row + area.rowCount);
  const formulas = isWhole ? allFormulas : allFormulas.map((row) => row.slice(area.column, until));
  if (tableName === null && resultArea(formulas, cells, 0, 0, area.columnCount) !== null) return null;

  const headings = headingTexts(cells[0]);
  const given = chosenKind(headings, kindsGiven);
  const bearing = choicesOn(headings, sheetChoices);
  const { kinds, fieldCount } = guessTableKind(headings, bearing);
  const kind = given === undefined && kinds.length === 1 ? kinds[0] : given;
  const place = { sheetId: sheet.sheetId, sheetName: sheet.name };
  if (kind === undefined || kind === null) {
    // Beside a real table stand labels and lists; only what shows several known headings is worth a word.
    if (kind === undefined && tableName === null && fieldCount < 2) return null;
    const row = area.row + sheet.firstRow;
    const column = area.column + sheet.firstColumn;
    const other = { ...place, tableName, row, column, headings, kinds };
    return kind === null ? { leftOut: other } : { unread: other };
  }
  const chosen = bearing.filter((choice) => choice.kind === kind);
  const { columnOf, hintOf, contested } = assignColumns(headings, kind, chosen);
  const dataRows = findDataRows(cells, 0, headings, kind, columnOf);
  const table = {
    ...place,
    tableName,
    kind,
    cells,
    formulas,
    headingRow: 0,
    headings,
    columnOf,
    hintOf,
    contested,
    dataRows,
    firstRow: area.row + sheet.firstRow,
    firstColumn: area.column + sheet.firstColumn,
  };
  return { table };
}
