import { strToU8 } from "fflate";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { xmlEscape } from "../file/xmlEscape";
import { addPart } from "./addPart";
import { keptNamespace } from "./keptNamespace";
import { keptPartPath } from "./keptPartPath";

const RELATIONSHIP = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/customXml";

/** The parts with these texts kept in them. */
export function writeKeptPart(parts: WorkbookParts, kept: ReadonlyMap<string, string>): WorkbookParts {
  if (kept.size === 0 && keptPartPath(parts) === undefined) return parts;
  const texts = [...kept].map(([key, text]) => `<text key="${xmlEscape(key)}">${xmlEscape(text)}</text>`).join("");
  const xml = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<kept xmlns="${keptNamespace}">${texts}</kept>`;
  return addPart(parts, {
    path: keptPartPath(parts) ?? freePath(parts),
    content: strToU8(xml),
    contentType: "application/xml",
    relationship: RELATIONSHIP,
  });
}

function freePath(parts: WorkbookParts): string {
  let number = 1;
  while (parts[`customXml/item${number}.xml`] !== undefined) number++;
  return `customXml/item${number}.xml`;
}
