import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { readNumber } from "./readNumber";

const EXPECTED = "a whole number of days, 0 or more";

/** A number of days, whole and 0 or more. Blank is null. Problems: argument-not-usable, number-ambiguous, error-in-cell. */
export function readWholeDays(raw: unknown, argument: string): Outcome<number | null> {
  const number = readNumber(raw, argument, EXPECTED);
  if (!number.ok || number.value === null || (Number.isSafeInteger(number.value) && number.value >= 0)) return number;
  return fail("argument-not-usable", { argument, given: showGiven(number.value), expected: EXPECTED });
}
