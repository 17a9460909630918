import { strFromU8 } from "fflate";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import type { WorkbookParts } from "./unpackWorkbook";

/** Where the relationships of a part lead: relationship id to the path of the part it names, from the top of the package. */
export function relationshipsOf(parts: WorkbookParts, path: string): ReadonlyMap<string, string> {
  const held = parts[path.replace(/([^/]+)$/, "_rels/$1.rels")];
  const tags = held === undefined ? [] : (strFromU8(held).match(/<(?:\w+:)?Relationship\b[^>]*>/g) ?? []);
  return new Map(
    tags
      .filter((tag) => xmlAttribute(tag, "TargetMode") !== "External")
      .map((tag) => [xmlAttribute(tag, "Id") ?? "", resolved(path, xmlAttribute(tag, "Target") ?? "")]),
  );
}

/** A target is told from the folder of the part that names it, or from the top (RFC 3986 5.2, as ISO/IEC 29500-2 8.3 has it). */
function resolved(from: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const folders = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") folders.pop();
    else if (step !== ".") folders.push(step);
  }
  return folders.join("/");
}
