import type { Cell } from "../../sheet/cell";
import { readHeading } from "../../sheet/readHeading";
import { sameHeading } from "../../sheet/sameHeading";
import { sheetNotes } from "../../sheet/sheetNotes";
import type { SheetTable } from "../../sheet/sheetTable";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import type { ReadTables } from "../state/ReadTables";
import type { FoundTable } from "./FoundTable";
import type { StartColumn, StartTable } from "./StartTable";

/** Which of the tables to begin with the workbook has, and which of their columns it lacks. */
export function foundTables(startTables: readonly StartTable[], read: ReadTables): readonly FoundTable[] {
  return startTables.map((start) => {
    if (start.kind === null) {
      return {
        start,
        table: null,
        place: hostTable(start, read.workbook) ?? jobNotes(start, read.workbook),
        missing: [],
      };
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
      const isHeaded = (typed: Cell | undefined, heading: string): boolean =>
        typeof typed === "string" && sameHeading(typed, heading);
      const [first] = start.columns;
      const isSame =
        first !== undefined &&
        isHeaded(headings[0], first.heading) &&
        start.columns.every(({ heading }) => headings.some((typed) => isHeaded(typed, heading)));
      if (isSame) return { at: { sheetId: sheet.sheetId, row, column }, sheetName: sheet.name };
    }
  }
  return null;
}

/** Where a sheet says two or more of the job's facts beside their words, which the tool reads without a table. */
function jobNotes({ id, rows }: StartTable, { sheets }: WorkbookSnapshot): FoundTable["place"] {
  if (id !== "job") return null;
  for (const sheet of sheets) {
    const said = sheetNotes(sheet).filter(({ label }) =>
      rows.some(([fact]) => typeof fact === "string" && sameHeading(fact, label)),
    );
    const [first] = said;
    if (first === undefined || said.length < 2) continue;
    return { at: { ...first.at, column: first.at.column - 1 }, sheetName: sheet.name };
  }
  return null;
}
