import { datedPlans } from "../../../src/domain/day/datedPlans";
import type { Look } from "../../../src/domain/day/look";
import type { DatedPlan } from "../../../src/domain/day/looksOfPiece";
import { sayProblem } from "../../../src/domain/wording";

/** The days of some looks, planned. */
export function datedDays(looks: readonly Look[]): readonly DatedPlan[] {
  const days = datedPlans(looks);
  if (!days.ok) throw new Error(sayProblem(days.problem));
  return days.value;
}
