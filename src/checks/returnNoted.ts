import { isUndecided } from "../sheet/isUndecided";
import type { CheckedRow } from "./checkedRow";
import { textIn } from "./textIn";

/**
 * The field in which a row says that its piece was taken in again, though not when: its condition back, or who received it.
 *
 * How it goes and its tracking number do not say so: both are typed while it is on its way. Nor does a column of signatures,
 * which may be those of the loan.
 */
export function returnNoted(row: CheckedRow): "conditionBack" | "receivedBy" | null {
  for (const field of ["conditionBack", "receivedBy"] as const) {
    const text = textIn(row, field);
    if (text === null || text === "0" || isUndecided(text)) continue;
    const heading = row.table.headings[row.table.columnOf[field] ?? -1] ?? "";
    if (!/sign|firm|unterschr/i.test(heading)) return field;
  }
  return null;
}
