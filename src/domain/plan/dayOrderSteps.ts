import { copiedDay } from "./copiedDay";
import { dayEnd } from "./dayEnd";
import { dayLoads } from "./dayLoads";
import { STEPS_A_LOOK } from "./daySchedule";
import type { DayWork, MealRule } from "./dayWork";
import { easedArrivals } from "./easedArrivals";
import { emptyPlacedLook } from "./emptyPlacedLook";
import { mayEndBy } from "./mayEndBy";
import { mealInPart } from "./mealInPart";
import { openDay } from "./openDay";
import type { OrderSteps } from "./orderSteps";
import { orderOfTrail } from "./orderOfTrail";
import type { PartDay } from "./partDay";
import { placeLook } from "./placeLook";
import { setDay } from "./setDay";
import { soonestEnd } from "./soonestEnd";
import { standingOf } from "./standingOf";

/**
 * How orders of a day's looks are built, so that the last shot ends soonest.
 *
 * Until it is settled where the meal falls the day is timed without one, beside it the same with arrivals eased for the
 * bound (see `easedArrivals`).
 */
export function dayOrderSteps(work: DayWork): OrderSteps<PartDay> {
  const { meal: rule, callSeconds } = work;
  const loads = dayLoads(work);
  const placed = emptyPlacedLook();
  const trial = openDay(work);
  const easedTrial = openDay(work);
  const isOnlyPlanned = work.looks.every((look) => look.shotAtSeconds === null);
  // With several cameras that cross, one that is free sooner can make a later shot later; else sooner is never worse.
  const isSteady = work.cameras === 1 || work.crossingSeconds === 0;
  const eased = rule !== null && isSteady && isOnlyPlanned ? easedArrivals(work, rule) : null;
  const easedLoads = eased === null ? null : dayLoads(eased);

  function boundOf({ trail, left, state, easedState, meal, mealInTime }: PartDay): number {
    if (left.length === 0) return rule === null || meal !== null ? state.endSeconds : dayEnd(work, orderOfTrail(trail));
    if (!isOnlyPlanned && left.some((index) => work.looks[index]!.shotAtSeconds !== null)) return -Infinity;
    const end = soonestEnd(work, loads, state, left, meal === null ? callSeconds : meal.untilSeconds);
    if (rule === null || easedState === null || !mealInTime || end <= rule.dueSeconds) return end;
    return Math.max(end, soonestEnd(eased!, easedLoads!, easedState, left, callSeconds) + rule.lengthSeconds);
  }

  /** Whether nothing that is left can end in time for the meal, which then falls where the looks so far have it fall. */
  function isSettled({ mealInTime, left, state }: PartDay, { dueSeconds }: MealRule): boolean {
    if (!isSteady || !mealInTime || left.length === 0) return false;
    for (const index of left) if (mayEndBy(work, state, index, loads.leastChange[index]!, dueSeconds)) return false;
    return true;
  }

  /** A part that stands in the room for trials, in lists of its own, if an order can go on from there below the limit. */
  function keptIfBelow(part: PartDay, limit: number): PartDay | null {
    const bound = boundOf(part);
    if (bound >= limit) return null;
    const state = copiedDay(work, part.state);
    const { easedState } = part;
    return {
      ...part,
      bound,
      state,
      easedState: easedState === trial ? state : easedState && copiedDay(work, easedState),
    };
  }

  const all = work.looks.map((_, index) => index);
  return {
    open: {
      trail: null,
      left: all,
      state: openDay(work),
      easedState: eased === null ? null : openDay(eased),
      meal: null,
      mealInTime: false,
      lastEndInTime: -Infinity,
      allInTime: true,
      bound: isOnlyPlanned ? soonestEnd(work, loads, openDay(work), all, callSeconds) : -Infinity,
    },

    next(before, trail, left, limit) {
      setDay(trial, before.state);
      placeLook(work, trial, trail.thing, before.meal, placed);
      const moved = { ...before, trail, left, state: trial };
      if (rule === null || before.meal !== null) return keptIfBelow(moved, limit);
      for (let step = 0; step < STEPS_A_LOOK; step++) {
        const until = placed.untilSeconds[step]!;
        if (until === placed.fromSeconds[step]) continue;
        if (until > rule.dueSeconds) moved.allInTime = false;
        else moved.lastEndInTime = Math.max(moved.lastEndInTime, until);
      }
      if (before.trail === null) moved.mealInTime = moved.lastEndInTime > -Infinity;
      if (isSettled(moved, rule)) {
        const order = orderOfTrail(trail);
        const meal = mealInPart(work, order, rule);
        if (meal !== null) {
          setDay(trial, openDay(work));
          for (const index of order) placeLook(work, trial, index, meal, placed);
          return keptIfBelow({ ...moved, meal, easedState: null }, limit);
        }
      }
      if (before.easedState === null) return keptIfBelow(moved, limit);
      if (eased === work) return keptIfBelow({ ...moved, easedState: trial }, limit);
      setDay(easedTrial, before.easedState);
      placeLook(eased!, easedTrial, trail.thing, null, placed);
      return keptIfBelow({ ...moved, easedState: easedTrial }, limit);
    },

    bound: ({ bound }) => bound,

    costSoFar: ({ state }) => state.endSeconds,

    standing: (part) => standingOf(work, part),

    key({ left, meal, state }) {
      // While the meal is open, what follows depends on more than when everything is free; only twins can be compared.
      let key = rule === null || meal !== null || left.length === 0 ? "" : "open";
      if (work.crossingSeconds > 0) key += ` ${state.cameras.lastSet.join()} ${meal === null ? "" : meal.fromSeconds}`;
      for (const index of left) {
        const { changeSecondsFrom, talents } = work.looks[index]!;
        if (changeSecondsFrom !== null) for (const talent of talents) key += ` ${state.lastLookOf[talent]}`;
      }
      return key;
    },

    needsEqual: ({ meal }) => !isSteady || (rule !== null && meal === null),
  };
}
