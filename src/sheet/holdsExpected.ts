import type { Cell } from "./cell";
import type { CellEdit } from "./cellEdit";
import { sameCell } from "./sameCell";

/** Whether a cell still holds what the writer of an edit believed. A formula nobody spoke of counts as something else. */
export function holdsExpected(
  edit: CellEdit,
  held: { readonly value: Cell; readonly formula: string | null },
): boolean {
  if (edit.expectedFormula !== undefined) return held.formula === edit.expectedFormula;
  return held.formula === null && sameCell(held.value, edit.expected);
}
