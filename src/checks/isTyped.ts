import type { CheckedRow } from "./checkedRow";
import { formulaIn } from "./formulaIn";

/** Whether a value was typed under a field: what a formula gives is mended at its source, never written over. */
export function isTyped(row: CheckedRow, field: string): boolean {
  return formulaIn(row, field) === null;
}
