import type { WorkingCalendar } from "./workingCalendar";

/**
 * A working calendar from closed weekdays (bit 0 Monday to bit 6 Sunday) and whole serial days on which nobody works,
 * in any order, doubles and days on closed weekdays allowed.
 */
export function calendarOf(closedWeekdays: number, closed: readonly number[] = []): WorkingCalendar {
  let openDaysAWeek = 7;
  for (let bits = closedWeekdays; bits !== 0; bits &= bits - 1) openDaysAWeek--;
  // Lists of holidays are nearly always in order and clear of weekends, and sorting costs more than the whole count.
  let isReady = true;
  let before = 0;
  for (let i = 0; i < closed.length; i++) {
    const day = closed[i]!;
    if (day <= before || (closedWeekdays >> ((day + 5) % 7)) & 1) {
      isReady = false;
      break;
    }
    before = day;
  }
  return { closedWeekdays, openDaysAWeek, closedDays: isReady ? closed : sortedOpenDays(closedWeekdays, closed) };
}

function sortedOpenDays(closedWeekdays: number, closed: readonly number[]): readonly number[] {
  const days = closed.filter((day) => !((closedWeekdays >> ((day + 5) % 7)) & 1)).sort((a, b) => a - b);
  return days.filter((day, i) => day !== days[i - 1]);
}
