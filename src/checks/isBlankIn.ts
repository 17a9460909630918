import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";

/** Whether a row holds nothing under a field, or the table lacks the column. */
export function isBlankIn(row: CheckedRow, field: string): boolean {
  return cellIn(row, field) === null;
}
