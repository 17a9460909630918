import { strFromU8 } from "fflate";
import { readKeptXml } from "../../sheet/readKeptXml";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { keptPartPath } from "./keptPartPath";

/** The texts kept in a workbook, by key: a custom XML part, which Excel carries along unread and shows to nobody. */
export function readKeptPart(parts: WorkbookParts): Map<string, string> {
  const path = keptPartPath(parts);
  return path === undefined ? new Map() : readKeptXml(strFromU8(parts[path] ?? new Uint8Array()));
}
