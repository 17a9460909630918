import type { SheetTable } from "../sheet/sheetTable";

/** One row of a table as a rule sees it. */
export interface CheckedRow {
  readonly table: SheetTable;
  /** Index into table.cells. */
  readonly row: number;
}
