import { strFromU8 } from "fflate";
import { keptNamespace } from "../../sheet/keptNamespace";
import type { WorkbookParts } from "../file/unpackWorkbook";

/** The part that keeps our texts, or undefined where a workbook has none yet. */
export function keptPartPath(parts: WorkbookParts): string | undefined {
  return Object.keys(parts).find((path) => {
    return /^customXml\/item\d+\.xml$/.test(path) && strFromU8(parts[path] ?? new Uint8Array()).includes(keptNamespace);
  });
}
