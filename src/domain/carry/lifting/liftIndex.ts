import { fail } from "../../fail";
import type { Outcome } from "../../outcome";
import { showGiven } from "../../showGiven";
import { succeed } from "../../succeed";
import type { Lift } from "./lift";
import { liftLimit } from "./liftLimit";
import { liftOutside } from "./liftOutside";

/** A load over the recommended limit of its lift, both in the lift's unit. Problem: lift-outside-method, where there is no limit. */
export function liftIndex(load: number, lift: Lift): Outcome<number> {
  const outside = liftOutside(lift);
  if (outside === null) return succeed(load / liftLimit(lift));
  const { argument, most } = outside;
  return fail("lift-outside-method", { argument, given: showGiven(lift[argument]), most });
}
