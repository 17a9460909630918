import { strFromU8, strToU8 } from "fflate";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { addPart } from "./addPart";

const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes>' +
  '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
  '<cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

/**
 * The parts with what cm="1" refers to: the mark of a formula that spills ([MS-XLSX] 2.4.86). A file that has
 * metadata of its own keeps it, provided that its first entry is that mark, as Excel writes it.
 */
export function dynamicArrayParts(parts: WorkbookParts): WorkbookParts {
  const held = parts["xl/metadata.xml"];
  if (held !== undefined && strFromU8(held).includes("XLDAPR")) return parts;
  return addPart(parts, {
    path: "xl/metadata.xml",
    content: strToU8(METADATA),
    contentType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml",
    relationship: "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata",
  });
}
