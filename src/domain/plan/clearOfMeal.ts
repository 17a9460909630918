import type { MealSpan } from "./daySchedule";

/** When work of that length can begin at the earliest, so that no part of it falls into the meal: everyone stops for it. */
export function clearOfMeal(fromSeconds: number, lengthSeconds: number, meal: MealSpan | null): number {
  if (meal === null) return fromSeconds;
  const fallsInto = fromSeconds < meal.untilSeconds && fromSeconds + lengthSeconds > meal.fromSeconds;
  return fallsInto ? meal.untilSeconds : fromSeconds;
}
