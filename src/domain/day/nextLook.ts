import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { clockSeconds } from "./clockSeconds";
import type { Day } from "./day";
import { dayPlan } from "./dayPlan";
import type { PlannedLook } from "./plannedDay";
import { secondsNearCall } from "./secondsNearCall";

/** The look to get ready next, as planned from now on. */
export interface NextLook {
  readonly planned: PlannedLook;
  /** Whole minutes from now until it is called, which is when its shot can begin; what is left of a minute does not count. */
  readonly minutesUntilCalled: number;
}

/**
 * The first look of the day that is not yet shot, re-timed from now; null where every look is shot.
 *
 * What was shot stays where it was; a shot said to begin after now has not happened yet. Nothing of the other looks counts
 * as begun, since the sheet does not say what is under way. `now` is a fraction of a day; more than twelve hours before call it is the
 * next morning's. Problems as for dayPlan.
 */
export function nextLook(day: Day, now: number): Outcome<NextLook | null> {
  const callSeconds = clockSeconds(day.call);
  const nowSeconds = secondsNearCall(now, callSeconds);
  const looks = day.looks.map((look) =>
    look.shotAt !== null && secondsNearCall(look.shotAt, callSeconds) > nowSeconds ? { ...look, shotAt: null } : look,
  );
  const plan = dayPlan({ ...day, looks }, nowSeconds);
  if (!plan.ok) return plan;
  const planned = plan.value.looks.find(({ look }) => look.shotAt === null);
  if (planned === undefined) return succeed(null);
  const minutesUntilCalled = Math.floor((clockSeconds(planned.shootFrom) - nowSeconds) / 60);
  return succeed({ planned, minutesUntilCalled });
}
