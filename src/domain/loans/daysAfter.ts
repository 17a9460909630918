import type { WorkingCalendar } from "../dates/workingCalendar";
import { workdaysBetween } from "../dates/workdaysBetween";
import type { Counting } from "./counting";

/** The days after one day up to and with another, on or after it: the first day is day 0. */
export function daysAfter(from: number, until: number, counting: Counting, calendar: WorkingCalendar): number {
  if (from === until) return 0;
  return counting === "calendar" ? until - from : workdaysBetween(from + 1, until, calendar);
}
