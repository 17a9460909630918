import { beginsInTime } from "./beginsInTime";
import { dayEnd } from "./dayEnd";
import { dayOrderSteps } from "./dayOrderSteps";
import type { DayWork, MealRule } from "./dayWork";
import { easedArrivals } from "./easedArrivals";
import type { OrderRules } from "./orderRules";
import { searchedOrder } from "./searchedOrder";
import type { OrderEffort, SearchedOrder } from "./searchedOrder";
import type { Stepwise } from "./stepwise";

/** How much of the effort may go into the day without its meal. */
const SHARE_WITHOUT_MEAL = 1 / 2;

/**
 * The order found in which the last shot ends soonest, from one that keeps the rules; the result never ends later.
 *
 * A day with a meal is first ordered without it, where whatever is sooner is never worse and a proof comes easily: the
 * day cannot end before that, nor, if that is past the hour of the meal, before that and the meal's length
 * (see `easedArrivals`). Mostly it need not end later either.
 */
export function* searchedDay(
  work: DayWork,
  rules: OrderRules,
  start: readonly number[],
  effort: OrderEffort,
): Stepwise<SearchedOrder> {
  const task = { ...rules, cost: (order: readonly number[]) => dayEnd(work, order) };
  const { meal } = work;
  if (meal === null || !isWholeMealLater(work, meal)) {
    return yield* searchedOrder(task, dayOrderSteps(work), start, effort);
  }
  const without = { ...easedArrivals(work, meal), meal: null };
  const tries = Math.floor(effort.tries * SHARE_WITHOUT_MEAL);
  const found = yield* searchedOrder(
    { ...rules, cost: (order: readonly number[]) => dayEnd(without, order) },
    dayOrderSteps(without),
    start,
    { ...effort, tries, beginnings: Math.floor(effort.beginnings * SHARE_WITHOUT_MEAL) },
  );
  const knownBound = found.bound > meal.dueSeconds ? found.bound + meal.lengthSeconds : found.bound;
  const better = task.cost(found.order) < task.cost(start) ? found.order : start;
  const best = yield* searchedOrder(task, dayOrderSteps(work), better, {
    ...effort,
    tries: effort.tries - tries,
    beginnings: effort.beginnings - found.beginnings,
    knownBound,
  });
  return { ...best, beginnings: best.beginnings + found.beginnings };
}

/** Whether every order that outlasts the hour of the meal ends later by the whole meal than it would without. */
function isWholeMealLater(work: DayWork, meal: MealRule): boolean {
  const isSteady = work.cameras === 1 || work.crossingSeconds === 0;
  return isSteady && work.looks.every((look) => look.shotAtSeconds === null) && beginsInTime(work, meal.dueSeconds);
}
