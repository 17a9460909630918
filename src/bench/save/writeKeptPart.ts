import { strFromU8, strToU8 } from "fflate";
import { keptNamespace } from "../../sheet/keptNamespace";
import { keptXml } from "../../sheet/keptXml";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { addPart } from "./addPart";
import { keptPartPath } from "./keptPartPath";

const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006";
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
/** Tells the part from all others of a workbook; there is one of ours. */
const ITEM_ID = "{6E2B4C1A-0F6D-4B7E-9A55-3D8C71F0A2E9}";

/** The parts with these texts kept in them. */
export function writeKeptPart(parts: WorkbookParts, kept: ReadonlyMap<string, string>): WorkbookParts {
  const held = keptPartPath(parts);
  if (kept.size === 0 && held === undefined) return parts;
  const path = held ?? freePath(parts);
  const written = addPart(parts, {
    path,
    content: strToU8(keptXml(kept)),
    contentType: "application/xml",
    relationship: `${OFFICE}/relationships/customXml`,
  });
  return held === undefined ? withProperties(written, path) : written;
}

/** The parts with the properties of a new custom XML part, as every Office program writes them beside it (ISO/IEC 29500-1 15.2.6). */
function withProperties(parts: WorkbookParts, path: string): WorkbookParts {
  const number = /(\d+)\.xml$/.exec(path)?.[1] ?? "1";
  const properties = `customXml/itemProps${number}.xml`;
  const types = strFromU8(parts["[Content_Types].xml"] ?? new Uint8Array());
  const override = `<Override PartName="/${properties}" ContentType="application/vnd.openxmlformats-officedocument.customXmlProperties+xml"/>`;
  return {
    ...parts,
    "[Content_Types].xml": strToU8(types.replace(/<\/Types>/, `${override}</Types>`)),
    [`customXml/_rels/item${number}.xml.rels`]: strToU8(
      `${HEAD}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${OFFICE}/relationships/customXmlProps" Target="itemProps${number}.xml"/></Relationships>`,
    ),
    [properties]: strToU8(
      `${HEAD}<ds:datastoreItem ds:itemID="${ITEM_ID}" xmlns:ds="${OFFICE}/customXml"><ds:schemaRefs><ds:schemaRef ds:uri="${keptNamespace}"/></ds:schemaRefs></ds:datastoreItem>`,
    ),
  };
}

function freePath(parts: WorkbookParts): string {
  let number = 1;
  while (parts[`customXml/item${number}.xml`] !== undefined) number++;
  return `customXml/item${number}.xml`;
}
