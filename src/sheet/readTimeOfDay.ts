import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

const TIME = /^(\d{1,2})(?:\s*[:.h]\s*(\d{2})(?::(\d{2}))?|\s*h)?(?:\s*(?:([ap])\.?\s?m?\.?|uhr|hrs?|h|o'?clock))?$/i;
const CLOCK_OF_FOUR = /^([01]\d|2[0-3])([0-5]\d)(?:\s*(?:hrs?|h))?$/i;
const EXPECTED = "a time such as 09:30, or 25:30 for half past one the next morning";

/**
 * A time of day as the fraction of a day, 0 up to but not with 2: past 1 when work runs past midnight.
 *
 * Numbers are fractions; a day with a time (2000 or later) gives its time. Text: "09:30", "9.30", "9.30am", "9am", "9h30", "0930",
 * "9 Uhr", "25:30", "noon". "midnight" is refused, since it can begin or end the day. Blank is null; 0 is midnight as the day begins.
 * Problems: argument-not-usable, error-in-cell.
 */
export function readTimeOfDay(raw: unknown, argument: string): Outcome<number | null> {
  if (typeof raw === "number" && raw >= 0 && raw < 2) return succeed(raw);
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null) return succeed(null);
  const refused = fail("argument-not-usable", { argument, given: showGiven(value), expected: EXPECTED });
  if (typeof value === "number") {
    if (value >= 0 && value < 2) return succeed(value);
    // From 2000-01-01 on a number is a day; a whole one says no time.
    if (!(value >= 36526 && value < 2958466) || Number.isInteger(value)) return refused;
    return succeed(Math.round((value % 1) * 86400) / 86400);
  }
  if (typeof value === "boolean") return refused;
  const text = value.toLowerCase();
  if (/^(12 ?)?(noon|midday|midi|mezzogiorno|mediodía|mediodia|mittags?)$/.test(text)) return succeed(0.5);
  if (/^(12 ?)?(midnight|minuit|mezzanotte|medianoche|mitternacht)$/.test(text)) {
    const expected = "00:00 where it begins the day or 24:00 where it ends it";
    return fail("argument-not-usable", { argument, given: showGiven(value), expected });
  }
  const four = CLOCK_OF_FOUR.exec(text);
  if (four !== null) return succeed((+four[1]! * 60 + +four[2]!) / 1440);
  const parts = TIME.exec(text);
  // "9" alone is no time; "9 Uhr", "9h" and "9am" are.
  if (parts === null || /^\d+$/.test(text)) return refused;
  const half = parts[4];
  let hour = +parts[1]!;
  const minute = +(parts[2] ?? 0);
  const second = +(parts[3] ?? 0);
  if (minute > 59 || second > 59 || hour > 47 || (half !== undefined && (hour < 1 || hour > 12))) return refused;
  if (half !== undefined) hour = (hour % 12) + (half === "p" ? 12 : 0);
  return succeed((hour * 3600 + minute * 60 + second) / 86400);
}
