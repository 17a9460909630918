import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { inExcel } from "./inExcel";
import { keptKey } from "./keptKey";

/** Text kept in the workbook under a key, or null. Needs ExcelApi 1.4 (settings). */
export function readKept(key: string): Promise<Outcome<string | null>> {
  return inExcel("read what was kept in the workbook", async (context) => {
    const setting = context.workbook.settings.getItemOrNullObject(keptKey(key)).load("value");
    await context.sync();
    return succeed(setting.isNullObject ? null : String(setting.value));
  });
}
