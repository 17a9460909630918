import type { MealRule, DayWork } from "./dayWork";
import { STEPS_A_LOOK } from "./daySchedule";
import { emptyPlacedLook } from "./emptyPlacedLook";
import { openDay } from "./openDay";
import { placeLook } from "./placeLook";
import { scheduledDay } from "./scheduledDay";

/**
 * The end of the last shot in that order, meal kept: what `scheduledDay` says of it, without the rest.
 *
 * With one camera and nothing shot yet, whatever ends by the meal's beginning stands where it stood without a meal,
 * so the first place that `scheduledDay` would try for the meal is always the one: two passes, and no schedule is kept.
 */
export function dayEnd(work: DayWork, order: readonly number[]): number {
  if (work.cameras > 1 || work.looks.some((look) => look.shotAtSeconds !== null)) {
    return scheduledDay(work, order).endSeconds;
  }
  const placed = emptyPlacedLook();
  const state = openDay(work);
  let lastEndInTime = -Infinity;
  let firstEnd = Infinity;
  const dueSeconds = work.meal === null ? Infinity : work.meal.dueSeconds;
  for (const index of order) {
    placeLook(work, state, index, null, placed);
    for (let step = 0; step < STEPS_A_LOOK; step++) {
      const until = placed.untilSeconds[step]!;
      if (until === placed.fromSeconds[step]) continue;
      if (until < firstEnd) firstEnd = until;
      if (until <= dueSeconds && until > lastEndInTime) lastEndInTime = until;
    }
  }
  if (work.meal === null || state.endSeconds <= dueSeconds) return state.endSeconds;
  return endAround(work, work.meal, order, lastEndInTime === -Infinity ? firstEnd : lastEndInTime);
}

function endAround(work: DayWork, { lengthSeconds }: MealRule, order: readonly number[], fromSeconds: number): number {
  const meal = { fromSeconds, untilSeconds: fromSeconds + lengthSeconds };
  const placed = emptyPlacedLook();
  const state = openDay(work);
  for (const index of order) placeLook(work, state, index, meal, placed);
  return state.endSeconds;
}
