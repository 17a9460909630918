import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readNumber } from "./readNumber";

/**
 * A number from `least` to `most`, both ends allowed. Blank is null; where `least` is above 0 so is 0, as some hosts send blank cells so.
 * `unit` stands behind the bounds in the sentence. Problems: argument-not-usable, number-ambiguous, error-in-cell.
 */
export function readNumberBetween(
  raw: unknown,
  argument: string,
  least: number,
  most: number,
  unit = "",
): Outcome<number | null> {
  const expected = `a number from ${least} to ${most}${unit}`;
  const number = readNumber(raw, argument, expected);
  if (!number.ok || number.value === null) return number;
  if (number.value === 0 && least > 0) return succeed(null);
  if (number.value >= least && number.value <= most) return number;
  return fail("argument-not-usable", { argument, given: showGiven(number.value), expected });
}
