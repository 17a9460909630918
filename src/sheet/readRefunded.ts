import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { FIRST_LIKELY_DAY } from "./FIRST_LIKELY_DAY";
import { readDate } from "./readDate";
import { readFlag } from "./readFlag";
import { readScalar } from "./readScalar";

/**
 * When a receipt was refunded: a whole serial day, or only that it was, or was not, in the words readFlag knows.
 *
 * Blank (also 0) is null. A number that is no likely day is refused: an amount typed here would be taken for a day long past.
 * Problems: argument-not-usable, those of readDate, error-in-cell.
 */
export function readRefunded(raw: unknown, argument: string): Outcome<number | boolean | null> {
  if (raw === 0) return { ok: true, value: null };
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || typeof value === "boolean" || value === 0) return { ok: true, value: value || null };
  if (typeof value === "number" && !(value >= FIRST_LIKELY_DAY)) {
    const expected = "the day it was refunded, or yes; amounts belong under Amount refunded";
    return fail("argument-not-usable", { argument, given: showGiven(value), expected });
  }
  const flag = readFlag(value, argument);
  return flag.ok && typeof value === "string" ? flag : readDate(value, argument);
}
