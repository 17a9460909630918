import { sameCell } from "../sheet/sameCell";
import type { TargetCell } from "./targetCell";

/** Whether a cell still holds what the writer believed. A formula nobody spoke of counts as something else. */
export function holdsExpected({ edit, value, formula }: TargetCell): boolean {
  if (edit.expectedFormula !== undefined) return formula === edit.expectedFormula;
  return formula === null && sameCell(value, edit.expected);
}
