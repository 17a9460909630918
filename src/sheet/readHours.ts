import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { readNumber } from "./readNumber";

const EXPECTED = "hours as a number: type 6, not 6:00";

/**
 * A number of hours, 0 or from 1 up; a number between them is a time of day typed by mistake.
 *
 * Blank is null. Problems: argument-not-usable, number-ambiguous, error-in-cell.
 */
export function readHours(raw: unknown, argument: string): Outcome<number | null> {
  const hours = readNumber(raw, argument, EXPECTED);
  if (!hours.ok || hours.value === null || hours.value === 0 || hours.value >= 1) return hours;
  return fail("argument-not-usable", { argument, given: showGiven(hours.value), expected: EXPECTED });
}
