import type { SheetTable } from "../../sheet/sheetTable";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";

/** A workbook as last read, with the tables found in it. */
export interface ReadTables {
  readonly workbook: WorkbookSnapshot;
  readonly tables: readonly SheetTable[];
}
