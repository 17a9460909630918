import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { CellArea } from "../sheet/cellArea";
import { inExcel } from "./inExcel";

/** The cells the user has selected. Needs ExcelApi 1.1; Excel refuses where several blocks are selected. */
export function selection(): Promise<Outcome<CellArea>> {
  return inExcel("read the selection", async (context) => {
    const range = context.workbook.getSelectedRange().load("rowIndex,columnIndex,rowCount,columnCount,worksheet/id");
    await context.sync();
    const { rowIndex: row, columnIndex: column, rowCount, columnCount } = range;
    return succeed({ sheetId: range.worksheet.id, row, column, rowCount, columnCount });
  });
}
