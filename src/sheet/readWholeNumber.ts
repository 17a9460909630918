import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { readNumber } from "./readNumber";

/** A whole number from `least` to `most`. Blank is null. Problems: argument-not-usable, number-ambiguous, error-in-cell. */
export function readWholeNumber(raw: unknown, argument: string, least: number, most: number): Outcome<number | null> {
  const expected = `a whole number from ${least} to ${most}`;
  const number = readNumber(raw, argument, expected);
  if (!number.ok || number.value === null) return number;
  if (Number.isInteger(number.value) && number.value >= least && number.value <= most) return number;
  return fail("argument-not-usable", { argument, given: showGiven(number.value), expected });
}
