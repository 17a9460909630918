import { addMonths } from "../domain/dates/addMonths";

/** 2000-01-01. Nobody who keeps such a sheet today borrowed anything before. */
const FIRST_LIKELY_DAY = 36526;

/** Whether a day is too far from the day of the check to be meant: before 2000, or more than 5 years after it. */
export function isFarOff(day: number, asOf: number): boolean {
  if (day < FIRST_LIKELY_DAY) return true;
  if (day <= asOf + 1825) return false;
  const last = addMonths(asOf, 60);
  return last !== null && day > last;
}
