import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { headingWords } from "./headingWords";
import { readScalar } from "./readScalar";

/** What no heading says, and a cell does. */
const OPEN_AIR = /\b(?:street|beach|park|garden|rooftop|dehors|fuera|fuori)\b/i;
const INDOORS = /\b(?:dedans|dentro)\b/i;

/**
 * Whether a place is outside, from words such as "outdoors", "ext.", "inside", "studio" or "street" in the languages of the headings; "inside and out"
 * is outside, which asks for more. Blank (also 0) is null. Problems: argument-not-usable, error-in-cell.
 */
export function readIsOutside(raw: unknown, argument: string): Outcome<boolean | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  if (scalar.value === null || scalar.value === 0) return succeed(null);
  const words = headingWords(String(scalar.value));
  if (words.includes("outside") || words.includes("out")) return succeed(true);
  if (words.includes("inside") || words.includes("in") || words.includes("studio")) return succeed(false);
  if (OPEN_AIR.test(String(scalar.value))) return succeed(true);
  if (INDOORS.test(String(scalar.value))) return succeed(false);
  return fail("argument-not-usable", { argument, given: showGiven(scalar.value), expected: "inside or outside" });
}
