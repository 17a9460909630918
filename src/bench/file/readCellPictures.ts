import { strFromU8 } from "fflate";
import { areaOfReference } from "../../sheet/areaOfReference";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import type { FilePicture } from "./FilePicture";
import { relationshipsOf } from "./relationshipsOf";
import type { WorkbookParts } from "./unpackWorkbook";

const VALUES = "xl/richData/rdrichvalue.xml";
const STRUCTURES = "xl/richData/rdrichvaluestructure.xml";
const RELATIONS = "xl/richData/richValueRel.xml";

/**
 * The pictures that stand within cells of a sheet ([MS-XLSX] 2.6: a cell's vm names its value's metadata, that a rich
 * value, and that, where its structure is _localImage, a relationship to the picture).
 */
export function readCellPictures(parts: WorkbookParts, sheetPath: string, sheetId: string): FilePicture[] {
  if (parts[VALUES] === undefined) return [];
  const cells = text(parts, sheetPath).match(/<(?:\w+:)?c\s[^>]*\svm="[1-9]\d*"[^>]*>/g) ?? [];
  if (cells.length === 0) return [];
  const pathOf = picturePaths(parts);
  return cells.flatMap((cell) => {
    const name = xmlAttribute(cell, "r") ?? "";
    const place = areaOfReference(name);
    const path = pathOf(Number(xmlAttribute(cell, "vm")));
    if (place === null || path === undefined || parts[path] === undefined) return [];
    const at = { sheetId, row: place.startRow, column: place.startColumn };
    return [{ key: `${sheetId}\n${name}\n${path}`, at, name: `Picture in ${name}`, path }];
  });
}

/** From the number that a cell names to the part of its picture. */
function picturePaths(parts: WorkbookParts): (valueMetadata: number) => string | undefined {
  const metadata = text(parts, "xl/metadata.xml");
  const future = inner(metadata, 'futureMetadata[^>]*\\sname="XLRICHVALUE"[^>]*', "futureMetadata");
  const richValues = [...future.matchAll(/<(?:\w+:)?rvb\b[^>]*>/g)].map(([tag]) => Number(xmlAttribute(tag, "i")));
  const records = [...inner(metadata, "valueMetadata\\b[^>]*", "valueMetadata").matchAll(/<(?:\w+:)?rc\b[^>]*>/g)];
  const values = text(parts, VALUES).match(/<(?:\w+:)?rv\b[\s\S]*?<\/(?:\w+:)?rv>/g) ?? [];
  const structures = text(parts, STRUCTURES).match(/<(?:\w+:)?s\b[\s\S]*?<\/(?:\w+:)?s>/g) ?? [];
  const relations = text(parts, RELATIONS).match(/<(?:\w+:)?rel\b[^>]*>/g) ?? [];
  const targets = relationshipsOf(parts, RELATIONS);
  return (valueMetadata) => {
    const record = Number(xmlAttribute(records[valueMetadata - 1]?.[0] ?? "", "v") ?? -1);
    const value = values[richValues[record] ?? -1];
    if (value === undefined) return undefined;
    const structure = structures[Number(xmlAttribute(value, "s"))] ?? "";
    const keys = [...(structures.length > 0 ? structure.matchAll(/<(?:\w+:)?k\b[^>]*>/g) : [])].map(([tag]) =>
      xmlAttribute(tag, "n"),
    );
    const held = [...value.matchAll(/<(?:\w+:)?v\b[^>]*>([^<]*)</g)].map(([, content]) => Number(content));
    const relation = held[keys.indexOf("_rvRel:LocalImageIdentifier")];
    return targets.get(xmlAttribute(relations[relation ?? -1] ?? "", "(?:\\w+:)?id") ?? "");
  };
}

function inner(xml: string, open: string, close: string): string {
  return new RegExp(`<(?:\\w+:)?${open}>([\\s\\S]*?)</(?:\\w+:)?${close}>`).exec(xml)?.[1] ?? "";
}

function text(parts: WorkbookParts, path: string): string {
  return strFromU8(parts[path] ?? new Uint8Array());
}
