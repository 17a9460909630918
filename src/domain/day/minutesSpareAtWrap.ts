import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { clockSeconds } from "./clockSeconds";
import type { PlannedDay } from "./plannedDay";
import { wrapSeconds } from "./wrapSeconds";

/**
 * Minutes from the end of the last shot to wrap; below 0 the day runs over.
 *
 * A wrap earlier in the day than the call is the next morning's. A plan without looks is nothing-to-compute.
 */
export function minutesSpareAtWrap(plan: PlannedDay, wrap: number): Outcome<number> {
  if (plan.looks.length === 0)
    return fail("nothing-to-compute", { what: "the end of the day", fill: "the rows of looks" });
  return succeed((wrapSeconds(wrap, plan.call) - clockSeconds(plan.ends)) / 60);
}
