import type { SheetSnapshot } from "../sheet/sheetSnapshot";
import type { SheetTable } from "../sheet/sheetTable";

/** What the sheet check reads: the recognised tables of a workbook, in the order of its sheets. */
export interface CheckedWorkbook {
  readonly dateSystem: 1900 | 1904;
  readonly tables: readonly SheetTable[];
  /** The sheets, for what they say beside those tables; left out, nothing is said there. */
  readonly sheets?: readonly SheetSnapshot[];
}
