import type { DayWork, MealRule } from "./dayWork";

/**
 * The same work with arrivals as much sooner as a meal can make them seem; the work itself where that changes nothing.
 *
 * A day that outlasts the hour of its meal, cut at the meal and joined again without it, is a day in which no step is
 * sooner than it could be, but that who arrives during or after the meal seems to come sooner, by its length at most.
 * So with the meal no day ends sooner than without it on the eased work, and the meal's length later.
 * Once everybody is there work never rests for longer than a crossing or a hand-over, so that some step ends in the last
 * stretch before the meal is due that is as long as the longest step and that rest: who is there before that stretch is
 * there before the meal.
 */
export function easedArrivals(work: DayWork, { dueSeconds, lengthSeconds }: MealRule): DayWork {
  const { callSeconds, crossingSeconds, handOverSeconds, looks } = work;
  const longest = Math.max(
    ...looks.map((look) =>
      Math.max(
        look.hairMakeupSeconds,
        look.shootingSeconds,
        look.changeSeconds,
        ...(look.changeSecondsFrom?.values() ?? []),
      ),
    ),
  );
  const lastArrival = Math.max(...looks.map((look) => look.thereSeconds));
  const soonestMeal = dueSeconds - longest - Math.max(crossingSeconds, handOverSeconds);
  const knownFrom = lastArrival <= soonestMeal ? soonestMeal : callSeconds;
  if (lastArrival <= knownFrom) return work;
  const eased = (seconds: number): number =>
    seconds <= knownFrom ? seconds : Math.max(knownFrom, seconds - lengthSeconds);
  return { ...work, looks: looks.map((look) => ({ ...look, thereSeconds: eased(look.thereSeconds) })) };
}
