import type { WorkingCalendar } from "./workingCalendar";

/** How many of the calendar's closed dates on open weekdays lie before a day. */
export function closedDaysBefore(serial: number, { closedDays }: WorkingCalendar): number {
  let low = 0;
  let high = closedDays.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (closedDays[middle]! < serial) low = middle + 1;
    else high = middle;
  }
  return low;
}
