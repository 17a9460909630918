import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { inExcel } from "./inExcel";
import { keptParts } from "./keptParts";

/** Text kept in the workbook under a key, or null. */
export function readKept(key: string): Promise<Outcome<string | null>> {
  return inExcel("read what was kept in the workbook", async (context) => {
    const { texts } = await keptParts(context);
    return succeed(texts.get(key) ?? null);
  });
}
