import type { WorkingCalendar } from "./workingCalendar";
import { closedDaysBefore } from "./closedDaysBefore";

/**
 * Working days in a span, both ends counted; below 0 when the second day is the earlier (OpenFormula 6.10.14).
 */
export function workdaysBetween(first: number, last: number, calendar: WorkingCalendar): number {
  if (first > last) return -workdaysBetween(last, first, calendar) || 0;
  const { closedWeekdays, openDaysAWeek } = calendar;
  const weeks = Math.floor((last - first + 1) / 7);
  let count = weeks * openDaysAWeek;
  for (let day = first + weeks * 7; day <= last; day++) if (!((closedWeekdays >> ((day + 5) % 7)) & 1)) count++;
  return count - (closedDaysBefore(last + 1, calendar) - closedDaysBefore(first, calendar));
}
