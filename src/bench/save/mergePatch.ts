import { insertBefore } from "./insertBefore";

/** What stands after the cells of a sheet, with these merged blocks in place of those it had. */
export function mergePatch(after: string, references: readonly string[], prefix: string): string {
  const without = after.replace(/<(?:\w+:)?mergeCells\b[^>]*>[\s\S]*?<\/(?:\w+:)?mergeCells>/, "");
  if (references.length === 0) return without;
  const cells = references.map((reference) => `<${prefix}mergeCell ref="${reference}"/>`).join("");
  return insertBefore(
    without,
    "mergeCells",
    `<${prefix}mergeCells count="${references.length}">${cells}</${prefix}mergeCells>`,
  );
}
