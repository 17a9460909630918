import type { WorkingCalendar } from "./workingCalendar";
import { closedDaysBefore } from "./closedDaysBefore";

/** Whether a whole serial day is worked. */
export function isOpenDay(serial: number, calendar: WorkingCalendar): boolean {
  if ((calendar.closedWeekdays >> ((serial + 5) % 7)) & 1) return false;
  return calendar.closedDays[closedDaysBefore(serial, calendar)] !== serial;
}
