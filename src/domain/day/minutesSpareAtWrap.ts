import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { clockSeconds } from "./clockSeconds";
import type { PlannedDay } from "./plannedDay";
import { secondsADay } from "./secondsADay";

/**
 * Minutes from the end of the last shot to wrap; below 0 the day runs over.
 *
 * A wrap earlier in the day than the call is the next morning's. A plan without looks is nothing-to-compute.
 */
export function minutesSpareAtWrap(plan: PlannedDay, wrap: number): Outcome<number> {
  if (plan.looks.length === 0) return fail("nothing-to-compute", { what: "the end of the day" });
  const typedSeconds = clockSeconds(wrap);
  const wrapSeconds = typedSeconds < clockSeconds(plan.call) ? typedSeconds + secondsADay : typedSeconds;
  return succeed((wrapSeconds - clockSeconds(plan.ends)) / 60);
}
