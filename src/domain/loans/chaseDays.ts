import type { WorkingCalendar } from "../dates/workingCalendar";
import { workdayOffset } from "../dates/workdayOffset";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { noOpenWeekday } from "./noOpenWeekday";

/** From when on requests are chased, on one day, as serial days. */
export interface ChaseDays {
  /** The latest day on which an unanswered request was asked that is to be chased. */
  readonly lastAsked: number;
  /** The latest day of need that is near. */
  readonly lastNear: number;
}

/**
 * The days that decide what is to be chased: asked so many working days ago or more, needed within so many or past.
 *
 * Working days count as in DAYSOUT: the day itself is day 0. Problem: argument-not-usable where every weekday is closed.
 */
export function chaseDays(asOf: number, patienceDays: number, calendar: WorkingCalendar): Outcome<ChaseDays> {
  if (calendar.openDaysAWeek === 0) return noOpenWeekday();
  return succeed({
    lastAsked: patienceDays === 0 ? asOf : workdayOffset(asOf + 1, -patienceDays, calendar)! - 1,
    lastNear: workdayOffset(asOf, patienceDays + 1, calendar)! - 1,
  });
}
