import type { WorkingCalendar } from "./workingCalendar";

/**
 * A working calendar from closed weekdays (bit 0 Monday to bit 6 Sunday) and whole serial days on which nobody works,
 * in any order, doubles and days on closed weekdays allowed.
 */
export function calendarOf(closedWeekdays: number, closed: readonly number[] = []): WorkingCalendar {
  let openDaysAWeek = 7;
  for (let bits = closedWeekdays; bits !== 0; bits &= bits - 1) openDaysAWeek--;
  const days: number[] = [];
  let last = -1;
  let ascending = true;
  for (const serial of closed) {
    if ((closedWeekdays >> (serial + 5) % 7) & 1 || serial === last) continue;
    if (serial < last) ascending = false;
    days.push(serial);
    last = serial;
  }
  // Lists of holidays are nearly always in order already, and sorting costs more than the whole count.
  if (ascending) return { closedWeekdays, openDaysAWeek, closedDays: days };
  days.sort((a, b) => a - b);
  return { closedWeekdays, openDaysAWeek, closedDays: days.filter((day, i) => day !== days[i - 1]) };
}
