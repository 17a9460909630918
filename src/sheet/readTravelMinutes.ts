import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { readMinutes } from "./readMinutes";

/** Some seventy days: more is a mistake, and sums of a hundred in milliseconds stay exact. */
const MOST_MINUTES = 100_000;

/** Minutes as readMinutes reads them, at most 100,000: longer is argument-not-usable. */
export function readTravelMinutes(raw: unknown, argument: string): Outcome<number | null> {
  const minutes = readMinutes(raw, argument);
  if (!minutes.ok || minutes.value === null || minutes.value <= MOST_MINUTES) return minutes;
  const expected = `minutes up to ${MOST_MINUTES}`;
  return fail("argument-not-usable", { argument, given: showGiven(minutes.value), expected });
}
