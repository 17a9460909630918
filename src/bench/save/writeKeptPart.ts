import { strToU8 } from "fflate";
import { keptXml } from "../../sheet/keptXml";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { addPart } from "./addPart";
import { keptPartPath } from "./keptPartPath";

const RELATIONSHIP = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml";

/** The parts with these texts kept in them. */
export function writeKeptPart(parts: WorkbookParts, kept: ReadonlyMap<string, string>): WorkbookParts {
  if (kept.size === 0 && keptPartPath(parts) === undefined) return parts;
  return addPart(parts, {
    path: keptPartPath(parts) ?? freePath(parts),
    content: strToU8(keptXml(kept)),
    contentType: "application/xml",
    relationship: RELATIONSHIP,
  });
}

function freePath(parts: WorkbookParts): string {
  let number = 1;
  while (parts[`customXml/item${number}.xml`] !== undefined) number++;
  return `customXml/item${number}.xml`;
}
