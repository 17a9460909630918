import type { WorkingCalendar } from "../dates/workingCalendar";
import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import type { Counting } from "./counting";
import { daysAfter } from "./daysAfter";
import { lastDayHeld } from "./lastDayHeld";

/**
 * Whole days past the day due, less the days of grace, never below 0: up to the day back, or up to asOf while it is not back.
 *
 * Due on asOf is not late. Problems: nothing-to-compute without a due day; argument-missing without asOf while it is not back.
 */
export function daysLate(
  due: number | null,
  back: number | null,
  asOf: number | null,
  graceDays: number,
  counting: Counting,
  calendar: WorkingCalendar,
): Outcome<number> {
  if (due === null) return fail("nothing-to-compute", { what: "the days late", fill: "due" });
  const end = lastDayHeld(back, asOf);
  if (!end.ok) return end;
  if (end.value <= due) return succeed(0);
  return succeed(Math.max(0, daysAfter(due, end.value, counting, calendar) - graceDays));
}
