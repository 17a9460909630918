import type { WorkbookTables } from "../../sheet/readWorkbook";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";

/** A workbook as last read, with the tables found in it and the areas that look like tables and cannot be read. */
export interface ReadTables extends WorkbookTables {
  readonly workbook: WorkbookSnapshot;
}
