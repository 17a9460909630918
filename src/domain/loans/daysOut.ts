import { isoFromSerial } from "../dates/isoFromSerial";
import type { WorkingCalendar } from "../dates/workingCalendar";
import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import type { Counting } from "./counting";
import { daysAfter } from "./daysAfter";
import { lastDayHeld } from "./lastDayHeld";

/**
 * Whole days a piece has been or was held, the day out being day 0; 0 while it is not out yet.
 *
 * Counting "working" counts the working days after the day out, up to and with the end. Problems: nothing-to-compute without a
 * day out; argument-missing without asOf while it is not back; argument-not-usable for a day back before the day out.
 */
export function daysOut(
  out: number | null,
  back: number | null,
  asOf: number | null,
  counting: Counting,
  calendar: WorkingCalendar,
): Outcome<number> {
  if (out === null) return fail("nothing-to-compute", { what: "the days out", fill: "out" });
  const end = lastDayHeld(back, asOf);
  if (!end.ok) return end;
  if (asOf !== null && out > asOf) return succeed(0);
  if (end.value >= out) return succeed(daysAfter(out, end.value, counting, calendar));
  const expected = `a day on or after the day out, ${isoFromSerial(out)}`;
  return fail("argument-not-usable", { argument: "back", given: isoFromSerial(end.value), expected });
}
