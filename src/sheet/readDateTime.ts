import { dateFromText } from "../domain/dates/dateFromText";
import { isSerialDay } from "../domain/dates/isSerialDay";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

/**
 * A day with its time as the fraction, from a serial number, ISO text or text with a named month.
 *
 * Blank (also 0, as some hosts send a blank cell) is null. Numbers run from 1 (1900-01-01) to 2958465 (9999-12-31).
 * Problems: date-ambiguous, date-figures-only, date-not-understood, argument-not-usable (a weekday that contradicts), error-in-cell.
 */
export function readDateTime(raw: unknown, argument: string): Outcome<number | null> {
  if (typeof raw === "number") return readSerial(raw, argument);
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null) return succeed(null);
  if (typeof value === "number") return readSerial(value, argument);
  if (typeof value === "boolean") return fail("date-not-understood", { argument, given: showGiven(value) });
  return dateFromText(value, argument);
}

function readSerial(serial: number, argument: string): Outcome<number | null> {
  if (serial === 0) return succeed(null);
  if (isSerialDay(serial)) return succeed(serial);
  return fail("date-not-understood", { argument, given: showGiven(serial) });
}
