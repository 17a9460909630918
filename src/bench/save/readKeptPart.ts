import { strFromU8 } from "fflate";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { xmlAttribute } from "../file/xmlAttribute";
import { xmlText } from "../file/xmlText";
import { keptPartPath } from "./keptPartPath";

/** The texts kept in a workbook, by key: a custom XML part, which Excel carries along unread and shows to nobody. */
export function readKeptPart(parts: WorkbookParts): Map<string, string> {
  const path = keptPartPath(parts);
  const xml = path === undefined ? "" : strFromU8(parts[path] ?? new Uint8Array());
  const entries = [...xml.matchAll(/<text\b([^>]*)>([^<]*)<\/text>/g)];
  return new Map(
    entries.map(([, attributes = "", text = ""]) => [xmlAttribute(attributes, "key") ?? "", xmlText(text)]),
  );
}
