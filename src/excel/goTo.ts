import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { CellPosition } from "../sheet/cellPosition";
import { inExcel } from "./inExcel";

/** Shows the cell and selects it. Needs ExcelApi 1.7 (getRangeByIndexes). */
export function goTo(at: CellPosition): Promise<Outcome<void>> {
  const doing = "go to the cell";
  return inExcel(doing, async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(at.sheetId).load("name,visibility");
    await context.sync();
    if (sheet.isNullObject) return fail("sheet-gone", { doing });
    if (sheet.visibility !== "Visible") return fail("sheet-hidden", { sheet: sheet.name });
    sheet.activate();
    sheet.getRangeByIndexes(at.row, at.column, 1, 1).select();
    await context.sync();
    return succeed(undefined);
  });
}
