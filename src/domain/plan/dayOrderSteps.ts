import { dayEnd } from "./dayEnd";
import { dayLoads } from "./dayLoads";
import { STEPS_A_LOOK } from "./daySchedule";
import type { DayState } from "./dayState";
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

type OpenPart = Omit<PartDay, "bound" | "endSeconds" | "key" | "standing">;

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
  const atCall = openDay(work);
  const isOnlyPlanned = work.looks.every((look) => look.shotAtSeconds === null);
  // With several cameras that cross, one that is free sooner can make a later shot later; else sooner is never worse.
  const isSteady = work.cameras === 1 || work.crossingSeconds === 0;
  const eased = rule !== null && isSteady && isOnlyPlanned ? easedArrivals(work, rule) : null;
  const easedLoads = eased === null ? null : dayLoads(eased);
  const isChangeGiven = work.looks.some(({ changeSecondsFrom }) => changeSecondsFrom !== null);

  // The beginning that is gone on from, timed, and the one that goes on by one more look.
  let timed: PartDay | null = null;
  const state = openDay(work);
  const trial = openDay(work);
  const easedState = openDay(work);
  const easedTrial = openDay(work);

  function timeAgain(part: PartDay): void {
    if (timed === part) return;
    const order = orderOfTrail(part.trail);
    placeAll(work, state, order, part.meal);
    if (eased !== null && eased !== work && part.meal === null) placeAll(eased, easedState, order, null);
    timed = part;
  }

  function placeAll(of: DayWork, day: DayState, order: readonly number[], meal: PartDay["meal"]): void {
    setDay(day, atCall);
    for (const index of order) placeLook(of, day, index, meal, placed);
  }

  function boundOf({ trail, left, meal, mealInTime }: OpenPart): number {
    if (left.length === 0) return rule === null || meal !== null ? trial.endSeconds : dayEnd(work, orderOfTrail(trail));
    if (!isOnlyPlanned && left.some((index) => work.looks[index]!.shotAtSeconds !== null)) return -Infinity;
    const end = soonestEnd(work, loads, trial, left, meal === null ? callSeconds : meal.untilSeconds);
    if (rule === null || eased === null || meal !== null || !mealInTime || end <= rule.dueSeconds) return end;
    const easedEnd =
      eased === work
        ? soonestEnd(work, loads, trial, left, callSeconds)
        : soonestEnd(eased, easedLoads!, easedTrial, left, callSeconds);
    return Math.max(end, easedEnd + rule.lengthSeconds);
  }

  /** Whether nothing that is left can end in time for the meal, which then falls where the looks so far have it fall. */
  function isSettled({ mealInTime, left }: OpenPart, { dueSeconds }: MealRule): boolean {
    if (!isSteady || !mealInTime || left.length === 0) return false;
    for (const index of left) if (mayEndBy(work, trial, index, loads.leastChange[index]!, dueSeconds)) return false;
    return true;
  }

  function keyOf({ left, meal }: OpenPart): string {
    // While the meal is open, what follows depends on more than when everything is free; only twins can be compared.
    let key = rule === null || meal !== null || left.length === 0 ? "" : "open";
    if (work.crossingSeconds > 0) {
      if (meal !== null) key += meal.fromSeconds;
      for (const set of trial.cameras.lastSet) key += String.fromCharCode(1 + set);
    }
    if (!isChangeGiven) return key;
    for (const index of left) {
      const { changeSecondsFrom, talents } = work.looks[index]!;
      if (changeSecondsFrom === null) continue;
      for (const talent of talents) key += String.fromCharCode(1 + trial.lastLookOf[talent]!);
    }
    return key;
  }

  /** What is remembered of a part that stands in the room for trials, if an order can go on from there below the limit. */
  function keptIfBelow(part: OpenPart, limit: number): PartDay | null {
    const bound = boundOf(part);
    if (bound >= limit) return null;
    // Written out, since a search makes a great many of these.
    const { trail, left, meal, mealInTime, lastEndInTime, allInTime } = part;
    return {
      trail,
      left,
      meal,
      mealInTime,
      lastEndInTime,
      allInTime,
      bound,
      endSeconds: trial.endSeconds,
      key: keyOf(part),
      standing: standingOf(work, trial, part),
    };
  }

  const all = work.looks.map((_, index) => index);
  return {
    open: {
      trail: null,
      left: all,
      meal: null,
      mealInTime: false,
      lastEndInTime: -Infinity,
      allInTime: true,
      bound: isOnlyPlanned ? soonestEnd(work, loads, atCall, all, callSeconds) : -Infinity,
      endSeconds: callSeconds,
      key: "",
      standing: null,
    },

    next(before, trail, left, limit) {
      timeAgain(before);
      setDay(trial, state);
      placeLook(work, trial, trail.thing, before.meal, placed);
      let { lastEndInTime, allInTime, mealInTime } = before;
      const { meal } = before;
      if (rule === null || meal !== null)
        return keptIfBelow({ trail, left, meal, mealInTime, lastEndInTime, allInTime }, limit);
      for (let step = 0; step < STEPS_A_LOOK; step++) {
        const until = placed.untilSeconds[step]!;
        if (until === placed.fromSeconds[step]) continue;
        if (until > rule.dueSeconds) allInTime = false;
        else lastEndInTime = Math.max(lastEndInTime, until);
      }
      if (before.trail === null) mealInTime = lastEndInTime > -Infinity;
      const moved = { trail, left, meal, mealInTime, lastEndInTime, allInTime };
      if (isSettled(moved, rule)) {
        const order = orderOfTrail(trail);
        // With one camera the first place for the meal is always the one; see `dayEnd`.
        const settled =
          work.cameras === 1 && isOnlyPlanned
            ? { fromSeconds: lastEndInTime, untilSeconds: lastEndInTime + rule.lengthSeconds }
            : mealInPart(work, order, rule);
        if (settled !== null) {
          placeAll(work, trial, order, settled);
          return keptIfBelow({ ...moved, meal: settled }, limit);
        }
      }
      if (eased !== null && eased !== work) {
        setDay(easedTrial, easedState);
        placeLook(eased, easedTrial, trail.thing, null, placed);
      }
      return keptIfBelow(moved, limit);
    },

    bound: ({ bound }) => bound,
    costSoFar: ({ endSeconds }) => endSeconds,
    standing: ({ standing }) => standing,
    key: ({ key }) => key,
    needsEqual: ({ meal }) => !isSteady || (rule !== null && meal === null),
  };
}
