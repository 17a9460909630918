import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { gramsPerUnit } from "./gramsPerUnit";
import { readScalar } from "./readScalar";

/** A unit of weight as the grams in it; blank, also 0, is null. Problems: argument-not-usable, error-in-cell. */
export function readWeightUnit(raw: unknown, argument: string): Outcome<number | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || value === 0) return succeed(null);
  const grams = typeof value === "string" ? gramsPerUnit(value) : null;
  if (grams !== null) return succeed(grams);
  return fail("argument-not-usable", { argument, given: showGiven(value), expected: '"kg", "g", "lb" or "oz"' });
}
