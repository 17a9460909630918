import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { CellPosition } from "../sheet/cellPosition";
import { inExcel } from "./inExcel";

/** The cell the user is at. Needs ExcelApi 1.7. */
export function activeCell(): Promise<Outcome<CellPosition>> {
  return inExcel("find the active cell", async (context) => {
    const cell = context.workbook.getActiveCell().load("rowIndex,columnIndex,worksheet/id");
    await context.sync();
    return succeed({ sheetId: cell.worksheet.id, row: cell.rowIndex, column: cell.columnIndex });
  });
}
