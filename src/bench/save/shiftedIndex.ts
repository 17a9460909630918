import type { StructureEdit } from "./structureEdit";

/** Where a row or column stands after an edit of its axis, or null where it was taken out. */
export function shiftedIndex(index: number, { kind, from, count }: StructureEdit): number | null {
  if (index < from) return index;
  if (kind === "insert") return index + count;
  return index < from + count ? null : index - count;
}
