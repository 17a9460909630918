import { strFromU8, strToU8 } from "fflate";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import type { WorkbookParts } from "../file/unpackWorkbook";

const RELATIONSHIPS = "xl/_rels/workbook.xml.rels";
const TYPES = "[Content_Types].xml";

export interface NewPart {
  readonly path: string;
  readonly content: Uint8Array;
  readonly contentType: string;
  /** The kind of relationship from the workbook. */
  readonly relationship: string;
}

/** The parts with one more that the workbook refers to; a part of that path is replaced and its entries kept. */
export function addPart(parts: WorkbookParts, { path, content, contentType, relationship }: NewPart): WorkbookParts {
  const types = strFromU8(parts[TYPES] ?? new Uint8Array());
  const relationships = strFromU8(parts[RELATIONSHIPS] ?? new Uint8Array());
  const target = path.startsWith("xl/") ? path.slice(3) : `../${path}`;
  const isTyped = types.includes(`PartName="/${path}"`);
  const isRelated = relationships.includes(`"${target}"`) || relationships.includes(`"/${path}"`);
  const override = `<Override PartName="/${path}" ContentType="${contentType}"/>`;
  const entry = `<Relationship Id="${freeId(relationships)}" Type="${relationship}" Target="${target}"/>`;
  return {
    ...parts,
    [path]: content,
    [TYPES]: strToU8(isTyped ? types : types.replace(/<\/Types>/, `${override}</Types>`)),
    [RELATIONSHIPS]: strToU8(
      isRelated ? relationships : relationships.replace(/<\/Relationships>/, `${entry}</Relationships>`),
    ),
  };
}

function freeId(relationships: string): string {
  const taken = new Set((relationships.match(/<Relationship\b[^>]*>/g) ?? []).map((tag) => xmlAttribute(tag, "Id")));
  let number = taken.size + 1;
  while (taken.has(`rId${number}`)) number++;
  return `rId${number}`;
}
