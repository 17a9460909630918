import { strFromU8, strToU8 } from "fflate";
import type { WorkbookParts } from "../file/unpackWorkbook";

/** The parts without one of them, nor any mention of it in the workbook's relationships and the list of types. */
export function removePart(parts: WorkbookParts, path: string): WorkbookParts {
  if (parts[path] === undefined) return parts;
  const rest = { ...parts };
  delete rest[path];
  const without = (name: string, pattern: RegExp) => {
    const held = rest[name];
    if (held !== undefined) rest[name] = strToU8(strFromU8(held).replace(pattern, ""));
  };
  const escaped = (text: string) => text.replace(/[.[\]()/+*?^$\\]/g, "\\$&");
  without("[Content_Types].xml", new RegExp(`<Override\\b[^>]*PartName="/${escaped(path)}"[^>]*/>`, "g"));
  without(
    "xl/_rels/workbook.xml.rels",
    new RegExp(`<Relationship\\b[^>]*Target="(?:/${escaped(path)}|${escaped(path.replace(/^xl\//, ""))})"[^>]*/>`, "g"),
  );
  return rest;
}
