import { openDayOnOrBefore } from "../dates/openDayOnOrBefore";
import type { WorkingCalendar } from "../dates/workingCalendar";
import { workdayOffset } from "../dates/workdayOffset";
import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { noOpenWeekday } from "./noOpenWeekday";

/**
 * The last serial day to send a piece so that it arrives by the day it is due, if handed over before the courier's cut-off.
 *
 * A due day on a closed day first moves to the working day before; then the working days in transit and for preparing
 * count back. Problems: nothing-to-compute without a due day; argument-not-usable where every weekday is closed or the day
 * lies before 1900-01-01.
 */
export function sendByDate(
  due: number | null,
  transitDays: number,
  prepDays: number,
  calendar: WorkingCalendar,
): Outcome<number> {
  if (calendar.openDaysAWeek === 0) return noOpenWeekday();
  if (due === null) return fail("nothing-to-compute", { what: "the day to send it", fill: "due" });
  const arrives = openDayOnOrBefore(due, calendar)!;
  const sent = workdayOffset(arrives, -(transitDays + prepDays), calendar)!;
  if (sent >= 1) return succeed(sent);
  const expected = "days that still begin on or after 1900-01-01";
  return fail("argument-not-usable", { argument: "transit", given: String(transitDays + prepDays), expected });
}
