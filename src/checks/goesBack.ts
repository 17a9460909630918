import { isoFromSerial } from "../domain/dates/isoFromSerial";
import { usualWarningDays } from "../domain/loans/usualWarningDays";
import type { CheckedRow } from "./checkedRow";
import type { CheckFacts } from "./checkFacts";
import { dayIn } from "./dayIn";
import { holdsSomething } from "./holdsSomething";
import { isFarOff } from "./isFarOff";

/**
 * The day a piece went back, or is due to within the days in which it is due soon; null where neither is so or it cannot be told.
 *
 * A late piece has yet to go back, so it counts as due.
 */
export function goesBack(
  row: CheckedRow,
  facts: CheckFacts,
): { readonly messageId: "back" | "due"; readonly day: string } | null {
  const loan = facts.loan(row);
  if (loan === null || loan.out === null || loan.isSettled || isFarOff(loan.out, facts.asOf)) return null;
  if (loan.back !== null && loan.back <= facts.asOf) {
    return isFarOff(loan.back, facts.asOf) ? null : { messageId: "back", day: isoFromSerial(loan.back) };
  }
  if (loan.held === 0) return null;
  const due = dayIn(row, holdsSomething(row, "extendedTo") ? "extendedTo" : "due");
  if (due === null || due > facts.asOf + usualWarningDays || isFarOff(due, facts.asOf)) return null;
  return { messageId: "due", day: isoFromSerial(due) };
}
