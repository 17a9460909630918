import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { searchedDay } from "../plan/searchedDay";
import { dayEnd } from "../plan/dayEnd";
import { dayOrderSteps } from "../plan/dayOrderSteps";
import { keepsRules } from "../plan/keepsRules";
import { nearestOrder } from "../plan/nearestOrder";
import { orderWithin } from "../plan/orderWithin";
import { scheduledDay } from "../plan/scheduledDay";
import type { Stepwise } from "../plan/stepwise";
import { succeed } from "../succeed";
import { clockFraction } from "./clockFraction";
import { clockSeconds } from "./clockSeconds";
import type { Day } from "./day";
import { dayProblem } from "./dayProblem";
import { lookOrderEffort } from "./lookOrderEffort";
import type { LookOrderEffort } from "./lookOrderEffort";
import { lookOrderProblem } from "./lookOrderProblem";
import { lookOrderRules } from "./lookOrderRules";
import { looksInOrder } from "./looksInOrder";
import type { OrderedDay } from "./orderedDay";
import { planFromSchedule } from "./planFromSchedule";
import { workOfDay } from "./workOfDay";

/**
 * The plan of one day in the best order found, sought step by step: After and Fixed are kept, and what has been shot stays first.
 *
 * The last shot never ends later than in the order given, if that keeps After and Fixed; of orders that end equally
 * soon, one near to it. The search is seeded and counted, so the same day has the same order everywhere. Problems as
 * for dayPlan, but for an order that contradicts After; argument-not-usable for a Fixed that After does not allow.
 */
export function* lookOrderStepwise(day: Day, effort?: LookOrderEffort): Stepwise<Outcome<OrderedDay>> {
  const looks = looksInOrder(day.looks, clockSeconds(day.call));
  const problem = dayProblem(day, looks);
  if (problem !== null && problem.reason !== "look-before-its-after") return { ok: false, problem };
  const work = workOfDay(day, looks);
  const given = looks.map((_, index) => index);
  if (!Number.isFinite(scheduledDay(work, given).endSeconds)) return fail("result-not-finite", { what: "The day" });
  const rules = lookOrderRules(looks, work);
  const start = orderWithin(rules);
  if (start === null) return lookOrderProblem(looks, rules);

  const { nearestWidth, ...search } = effort ?? lookOrderEffort(looks.length);
  const best = yield* searchedDay(work, rules, start, search);
  const task = { ...rules, cost: (tried: readonly number[]) => dayEnd(work, tried) };
  const order = yield* nearestOrder(task, dayOrderSteps(work), best.order, search.tries, nearestWidth);
  return succeed({
    plan: planFromSchedule(looks, work, order, scheduledDay(work, order)),
    minutesSaved: keepsRules(rules, given) ? (dayEnd(work, given) - best.cost) / 60 : null,
    endsNotBefore: clockFraction(Math.max(best.bound, work.callSeconds)),
    isProvedBest: best.bound >= best.cost,
  });
}
