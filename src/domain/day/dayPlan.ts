import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { scheduledDay } from "../plan/scheduledDay";
import { succeed } from "../succeed";
import { clockSeconds } from "./clockSeconds";
import type { Day } from "./day";
import { dayProblem } from "./dayProblem";
import { looksInOrder } from "./looksInOrder";
import { planFromSchedule } from "./planFromSchedule";
import type { PlannedDay } from "./plannedDay";
import { workOfDay } from "./workOfDay";

/**
 * The plan of one day in the order given: when each look is changed, ready and shot, and what it waits for.
 *
 * On a day under way nothing of a look that is not yet shot begins before `nowSeconds`, in seconds of the day of call.
 * Problems: looks-of-two-days, look-repeated, looks-in-a-circle, look-before-its-after, and argument-not-usable for
 * After, Fixed and a crew that lacks what a look needs; result-not-finite. A day without looks is an empty plan.
 */
export function dayPlan(day: Day, nowSeconds?: number): Outcome<PlannedDay> {
  const looks = looksInOrder(day.looks, clockSeconds(day.call));
  const problem = dayProblem(day, looks);
  if (problem !== null) return { ok: false, problem };
  const work = workOfDay(day, looks, nowSeconds);
  const order = looks.map((_, index) => index);
  const schedule = scheduledDay(work, order);
  if (!schedule.untilSeconds.every(Number.isFinite)) return fail("result-not-finite", { what: "The day" });
  return succeed(planFromSchedule(looks, work, order, schedule));
}
