import type { DaySchedule } from "./daySchedule";
import type { DayWork } from "./dayWork";
import { mealFits } from "./mealFits";
import { mealStartsInOrder } from "./mealStartsInOrder";
import { timedSteps } from "./timedSteps";

/**
 * The whole day in the order given, with its meal.
 *
 * One meal, begun at the latest step end that is not after it is due; steps that would span it begin after it.
 * Where no end in time will do, it begins at the first end that does, late. Every step that ends by the meal's
 * beginning stands where it stood without a meal, so the ends of the unbroken day are all there is to try.
 * A day that is over before the meal is due keeps none.
 */
export function scheduledDay(work: DayWork, order: readonly number[]): DaySchedule {
  const unbroken = timedSteps(work, order, null);
  if (work.meal === null || unbroken.endSeconds <= work.meal.dueSeconds) return unbroken;
  for (const fromSeconds of mealStartsInOrder(unbroken, work.meal.dueSeconds)) {
    const meal = { fromSeconds, untilSeconds: fromSeconds + work.meal.lengthSeconds };
    const broken = timedSteps(work, order, meal);
    if (mealFits(broken)) return broken;
  }
  return unbroken;
}
