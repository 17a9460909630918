import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { keptXml } from "../sheet/keptXml";
import { inExcel } from "./inExcel";
import { keptParts } from "./keptParts";

/**
 * Keeps text in the workbook under a key; it is saved with the file.
 *
 * In a custom XML part and not in a cell, so that nothing shows up in anybody's sheet; and not in the workbook's
 * settings, which belong to one add-in in one host, while a part goes wherever the file goes. All texts are in one
 * part, so that writes must wait for one another.
 */
export function writeKept(key: string, text: string): Promise<Outcome<void>> {
  return inExcel("keep it in the workbook", async (context) => {
    const { parts, texts } = await keptParts(context);
    const xml = keptXml(texts.set(key, text));
    const [first, ...others] = parts;
    if (first === undefined) context.workbook.customXmlParts.add(xml);
    else first.setXml(xml);
    for (const part of others) part.delete();
    await context.sync();
    return succeed(undefined);
  });
}
