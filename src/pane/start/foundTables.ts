import { readHeading } from "../../sheet/readHeading";
import { sameHeading } from "../../sheet/sameHeading";
import type { SheetTable } from "../../sheet/sheetTable";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import type { ReadTables } from "../state/ReadTables";
import type { FoundTable } from "./FoundTable";
import type { StartColumn, StartTable } from "./StartTable";

/** Which of the tables to begin with the workbook has, and which of their columns it lacks. */
export function foundTables(startTables: readonly StartTable[], read: ReadTables): readonly FoundTable[] {
  return startTables.map((start) => {
    if (start.kind === null) {
      return { start, table: null, place: hostTable(start, read.workbook), missing: [] };
    }
    const table = read.tables
      .filter(({ kind }) => kind === start.kind)
      .reduce<SheetTable | null>(
        (best, one) => (best && best.dataRows.length >= one.dataRows.length ? best : one),
        null,
      );
    if (table === null) return { start, table, place: null, missing: [] };
    const at = { sheetId: table.sheetId, row: table.firstRow + table.headingRow, column: table.firstColumn };
    const missing = start.columns.filter((column) => !hasColumn(table, column));
    return { start, table, place: { at, sheetName: table.sheetName }, missing };
  });
}

function hasColumn(table: SheetTable, { heading }: StartColumn): boolean {
  if (table.headings.some((typed) => sameHeading(typed, heading))) return true;
  const fields = readHeading(table.kind, heading)?.readings.map(({ field }) => field) ?? [];
  const [field] = fields;
  return field !== undefined && (table.columnOf[field] !== undefined || table.contested?.has(field) === true);
}

/** The host's table whose first heading is this one's, wherever it stands. */
function hostTable(start: StartTable, workbook: WorkbookSnapshot): FoundTable["place"] {
  for (const sheet of workbook.sheets) {
    for (const { row, column, columnCount } of sheet.tables) {
      const from = column - sheet.firstColumn;
      const headings = sheet.values[row - sheet.firstRow]?.slice(from, from + columnCount) ?? [];
      const isSame = start.columns.every(({ heading }) =>
        headings.some((typed) => typeof typed === "string" && sameHeading(typed, heading)),
      );
      if (isSame) return { at: { sheetId: sheet.sheetId, row, column }, sheetName: sheet.name };
    }
  }
  return null;
}
