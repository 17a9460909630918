import type { DaySchedule } from "./daySchedule";

/** Whether the meal of a schedule begins exactly when some step ends, and no step reaches into it. */
export function mealFits(schedule: DaySchedule): boolean {
  const meal = schedule.meal;
  if (meal === null) return true;
  let beginsAtAnEnd = false;
  for (let step = 0; step < schedule.fromSeconds.length; step++) {
    const from = schedule.fromSeconds[step]!;
    const until = schedule.untilSeconds[step]!;
    if (until === from) continue;
    if (from < meal.untilSeconds && until > meal.fromSeconds) return false;
    if (until === meal.fromSeconds) beginsAtAnEnd = true;
  }
  return beginsAtAnEnd;
}
