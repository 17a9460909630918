import type { MealSpan } from "./daySchedule";
import type { DayWork, MealRule } from "./dayWork";
import { mealFits } from "./mealFits";
import { mealStartsInOrder } from "./mealStartsInOrder";
import { timedSteps } from "./timedSteps";

/** Where the meal falls in a day that begins with these looks, if nothing that is left can end in time for it; null where none of their ends in time will do. */
export function mealInPart(work: DayWork, order: readonly number[], rule: MealRule): MealSpan | null {
  for (const fromSeconds of mealStartsInOrder(timedSteps(work, order, null), rule.dueSeconds)) {
    if (fromSeconds > rule.dueSeconds) return null;
    const meal = { fromSeconds, untilSeconds: fromSeconds + rule.lengthSeconds };
    if (mealFits(timedSteps(work, order, meal))) return meal;
  }
  return null;
}
