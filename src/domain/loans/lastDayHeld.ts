import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";

/**
 * The day up to which a loan is counted: the day the piece came back, or asOf while it is not back; a back day after asOf is not
 * yet back. Problem: argument-missing when asOf is needed and blank.
 */
export function lastDayHeld(back: number | null, asOf: number | null): Outcome<number> {
  if (back !== null && (asOf === null || back <= asOf)) return succeed(back);
  if (asOf !== null) return succeed(asOf);
  return fail("argument-missing", { argument: "asOf", expected: "the day to look at, such as 2026-03-05 or TODAY()" });
}
