import type { WorkingCalendar } from "./workingCalendar";
import { isOpenDay } from "./isOpenDay";

/** The day itself when it is worked, else the nearest worked day after it; null when every weekday is closed. */
export function openDayOnOrAfter(serial: number, calendar: WorkingCalendar): number | null {
  if (calendar.openDaysAWeek === 0) return null;
  let day = serial;
  while (!isOpenDay(day, calendar)) day++;
  return day;
}
