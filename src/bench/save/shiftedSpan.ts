import { shiftedIndex } from "./shiftedIndex";
import type { StructureEdit } from "./structureEdit";

/** A span of rows or columns, both ends counted, after an edit of its axis; null where nothing of it is left. */
export function shiftedSpan(
  [first, last]: readonly [number, number],
  edit: StructureEdit,
): readonly [number, number] | null {
  if (edit.kind === "insert") {
    return [first + (first >= edit.from ? edit.count : 0), last + (last >= edit.from ? edit.count : 0)];
  }
  const end = edit.from + edit.count;
  const start = shiftedIndex(first, edit) ?? edit.from;
  const stop = shiftedIndex(last, edit) ?? edit.from - 1;
  return first >= edit.from && last < end ? null : [start, stop];
}
