import { assignColumns } from "./assignColumns";
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
interface UnreadArea {
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
}

/**
 * The tables of a workbook: the host's own tables, and areas under a row of headings.
 *
 * Choices made by hand (kept in the workbook) go before the vocabulary. A heading row must name enough fields of one kind;
 * what names too few, or as many of two kinds, comes back as unread. A result that spills from a formula is no table.
 */
export function readWorkbook(workbook: WorkbookSnapshot, choices: ColumnChoices = {}): WorkbookTables {
  const tables: SheetTable[] = [];
  const unread: UnreadArea[] = [];
  for (const sheet of workbook.sheets) {
    const chosen = Object.hasOwn(choices, sheet.name) ? choices[sheet.name]! : [];
    const found = areasOf(sheet, chosen).map((named) => readArea(sheet, named, chosen));
    tables.push(...found.filter((one): one is SheetTable => one !== null && "cells" in one));
    unread.push(...found.filter((one): one is UnreadArea => one !== null && !("cells" in one)));
  }
  return { tables, unread };
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
): SheetTable | UnreadArea | null {
  const until = area.column + area.columnCount;
  const rows = sheet.values.slice(Math.max(area.row, 0), area.row + area.rowCount);
  const isWhole = area.column === 0 && rows.every((row) => row.length === area.columnCount);
  const cells = isWhole ? rows : rows.map((row) => row.slice(area.column, until));
  if (cells[0] === undefined) return null;
  const allFormulas = sheet.formulas.slice(area.row, area.row + area.rowCount);
  const formulas = isWhole ? allFormulas : allFormulas.map((row) => row.slice(area.column, until));
  if (tableName === null && resultArea(formulas, cells, 0, 0, area.columnCount) !== null) return null;

  const headings = headingTexts(cells[0]);
  const { kinds, fieldCount } = guessTableKind(headings, sheetChoices);
  const [kind] = kinds;
  const place = { sheetId: sheet.sheetId, sheetName: sheet.name };
  if (kind === undefined || kinds.length > 1) {
    // Beside a real table stand labels and lists; only what shows several known headings is worth a word.
    if (tableName === null && fieldCount < 2) return null;
    return {
      ...place,
      tableName,
      row: area.row + sheet.firstRow,
      column: area.column + sheet.firstColumn,
      headings,
      kinds,
    };
  }
  const chosen = sheetChoices.filter((choice) => choice.kind === kind);
  const { columnOf, hintOf, contested } = assignColumns(headings, kind, chosen);
  const dataRows = findDataRows(cells, 0, headings, kind, columnOf);
  return {
    ...place,
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
}
