import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readAmount } from "./readAmount";
import { readFlag } from "./readFlag";
import { readScalar } from "./readScalar";

/**
 * What of a receipt is kept: an amount of 0 or more, or yes (all of it) or no, in the words readFlag knows.
 *
 * A number is always an amount, also 1; blank is null. Problems: argument-not-usable, error-in-cell.
 */
export function readKept(raw: unknown, argument: string): Outcome<number | boolean | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || typeof value === "boolean") return succeed(value);
  const isAmount = typeof value === "number" || /\d/.test(value);
  const kept = isAmount ? readAmount(value, argument) : readFlag(value, argument);
  if (kept.ok) return kept;
  return fail("argument-not-usable", {
    argument,
    given: showGiven(value),
    expected: "yes, no or an amount of 0 or more",
  });
}
