import type { WorkingCalendar } from "./workingCalendar";
import { closedDaysBefore } from "./closedDaysBefore";

/**
 * The day so many working days after a day (before it, below 0), the day itself being day 0 whether worked or not.
 *
 * 0 gives the day itself, as OpenFormula 6.10.22 has it. null when every weekday is closed. The result may lie outside
 * the days a workbook can show.
 */
export function workdayOffset(serial: number, workdays: number, calendar: WorkingCalendar): number | null {
  if (workdays === 0) return serial;
  const { closedWeekdays, openDaysAWeek, closedDays } = calendar;
  if (openDaysAWeek === 0) return null;
  const step = workdays > 0 ? 1 : -1;
  // Whole weeks at once, all but the last open day, so that a start on a closed weekday ends on an open one.
  const weeks = Math.floor((Math.abs(workdays) - 1) / openDaysAWeek);
  let left = Math.abs(workdays) - weeks * openDaysAWeek;
  let day = serial + step * weeks * 7;
  let weekday = (((day + 5) % 7) + 7) % 7;
  // Every closed date passed costs one open weekday more, and that one may pass the next closed date.
  let next = step > 0 ? closedDaysBefore(serial + 1, calendar) : closedDaysBefore(serial, calendar) - 1;
  for (;;) {
    while (left > 0) {
      day += step;
      weekday = weekday + step === 7 ? 0 : weekday + step === -1 ? 6 : weekday + step;
      if (!((closedWeekdays >> weekday) & 1)) left--;
    }
    const closed = closedDays[next];
    if (closed === undefined || (step > 0 ? closed > day : closed < day)) return day;
    next += step;
    left = 1;
  }
}
