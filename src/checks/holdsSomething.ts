import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";

/** Whether a row holds something under a field in which 0 is a blank, as some hosts send blanks so. */
export function holdsSomething(row: CheckedRow, field: string): boolean {
  const cell = cellIn(row, field);
  return cell !== null && cell !== 0;
}
