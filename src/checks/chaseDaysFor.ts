import { chaseDays, type ChaseDays } from "../domain/loans/chaseDays";
import { usualPatienceDays } from "../domain/loans/usualPatienceDays";
import type { CheckedRow } from "./checkedRow";
import type { CheckFacts } from "./checkFacts";
import { lenderCalendar } from "./lenderCalendar";
import { textIn } from "./textIn";

/** From when on the requests to a row's lender are chased, by the days that lender works; null where these cannot be read. */
export function chaseDaysFor(row: CheckedRow, facts: CheckFacts): ChaseDays | null {
  const lender = textIn(row, "lender") ?? "";
  return facts.once("chase days", lender, () => {
    const calendar = lenderCalendar(lender, facts.lenders(), facts.notes.closedDays.days);
    const days = calendar === null ? null : chaseDays(facts.asOf, usualPatienceDays, calendar);
    return days !== null && days.ok ? days.value : null;
  });
}
