import type { StructureEdit } from "./structureEdit";

/**
 * The edits without those that were undone, so that what went with a row comes back with it: rows taken out and the same
 * rows put in again at once leave nothing behind.
 */
export function settledEdits(edits: readonly StructureEdit[]): StructureEdit[] {
  const settled: StructureEdit[] = [];
  for (const edit of edits) {
    const before = settled.at(-1);
    const isUndone =
      before !== undefined &&
      before.kind === "remove" &&
      edit.kind === "insert" &&
      (["sheetId", "axis", "from", "count"] as const).every((name) => before[name] === edit[name]);
    if (isUndone) settled.pop();
    else settled.push(edit);
  }
  return settled;
}
