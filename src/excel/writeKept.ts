import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { inExcel } from "./inExcel";
import { keptKey } from "./keptKey";

/**
 * Keeps text in the workbook under a key; it is saved with the file.
 *
 * In the workbook's settings (ExcelApi 1.4, documented as stored in the file for one add-in) and not in a cell, so
 * that nothing shows up in anybody's sheet.
 */
export function writeKept(key: string, text: string): Promise<Outcome<void>> {
  return inExcel("keep it in the workbook", async (context) => {
    context.workbook.settings.add(keptKey(key), text);
    await context.sync();
    return succeed(undefined);
  });
}
