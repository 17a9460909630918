import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { dayPlan } from "./dayPlan";
import { likelyCall } from "./likelyCall";
import type { Look } from "./look";
import { looksByDay } from "./looksByDay";
import type { DatedPlan } from "./looksOfPiece";
import { smallestCrew } from "./smallestCrew";
import { withoutPieces } from "./withoutPieces";

/** The plan of each day that looks fall on, with the smallest crew and the likely call, no look waiting for another's pieces, for what only asks which looks overlap. Problems as for dayPlan. */
export function datedPlans(looks: readonly Look[]): Outcome<readonly DatedPlan[]> {
  const plans: DatedPlan[] = [];
  for (const [date, ofDay] of looksByDay(looks)) {
    const plan = dayPlan({
      looks: ofDay.map(withoutPieces),
      call: likelyCall(ofDay),
      crew: smallestCrew,
      changes: new Map(),
    });
    if (!plan.ok) return plan;
    plans.push({ date, plan: plan.value });
  }
  return succeed(plans);
}
