import { isoFromSerial } from "../dates/isoFromSerial";
import type { Problem } from "../problem";
import type { Look } from "./look";

/** One plan is of one day: the problem where the looks hold two dates, or null. A look without a date is of that day. */
export function twoDaysProblem(looks: readonly Look[]): Problem | null {
  let first: number | null = null;
  for (const { date } of looks) {
    first ??= date;
    if (date !== null && date !== first) {
      return { reason: "looks-of-two-days", facts: { first: isoFromSerial(first!), second: isoFromSerial(date) } };
    }
  }
  return null;
}
