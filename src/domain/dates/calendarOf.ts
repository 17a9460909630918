import type { WorkingCalendar } from "./workingCalendar";

/** Up to so many days, putting each in its place costs less than calling the sort. */
const FEW_DAYS = 60;

/**
 * A working calendar from closed weekdays (bit 0 Monday to bit 6 Sunday) and whole serial days on which nobody works,
 * in any order, doubles and days on closed weekdays allowed.
 */
export function calendarOf(closedWeekdays: number, closed: readonly number[] = []): WorkingCalendar {
  let openDaysAWeek = 7;
  for (let bits = closedWeekdays; bits !== 0; bits &= bits - 1) openDaysAWeek--;
  // Lists of holidays are nearly always in order and clear of weekends, and sorting costs more than the whole count.
  let before = 0;
  for (let i = 0; i < closed.length; i++) {
    const day = closed[i]!;
    if (day <= before || (closedWeekdays >> ((day + 5) % 7)) & 1)
      return { closedWeekdays, openDaysAWeek, closedDays: sortedOpenDays(closedWeekdays, closed) };
    before = day;
  }
  return { closedWeekdays, openDaysAWeek, closedDays: closed };
}

function sortedOpenDays(closedWeekdays: number, closed: readonly number[]): readonly number[] {
  const days: number[] = [];
  for (const day of closed) {
    if ((closedWeekdays >> ((day + 5) % 7)) & 1) continue;
    let place = days.push(day) - 1;
    if (closed.length > FEW_DAYS) continue;
    for (; place > 0 && days[place - 1]! > day; place--) days[place] = days[place - 1]!;
    days[place] = day;
  }
  if (closed.length > FEW_DAYS) days.sort((a, b) => a - b);
  return days.filter((day, i) => day !== days[i - 1]);
}
