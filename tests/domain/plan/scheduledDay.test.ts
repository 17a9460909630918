import fc from "fast-check";
import { STEPS_A_LOOK } from "../../../src/domain/plan/daySchedule";
import type { DaySchedule, MealSpan } from "../../../src/domain/plan/daySchedule";
import type { DayWork } from "../../../src/domain/plan/dayWork";
import { scheduledDay } from "../../../src/domain/plan/scheduledDay";
import { minuteByMinute } from "./minuteByMinute";
import { smallDay } from "./smallDay";

const rowOrder = (work: DayWork): number[] => work.looks.map((_, index) => index);

/** The steps that have a length, with the look each belongs to. */
function stepsOf(day: DaySchedule, step: number): { look: number; from: number; until: number }[] {
  return day.fromSeconds
    .map((from, at) => ({
      look: Math.floor(at / STEPS_A_LOOK),
      step: at % STEPS_A_LOOK,
      from,
      until: day.untilSeconds[at]!,
    }))
    .filter((it) => it.step === step && it.until > it.from);
}

function mostAtOnce(steps: readonly { from: number; until: number }[]): number {
  return Math.max(0, ...steps.map((one) => steps.filter((it) => it.from <= one.from && one.from < it.until).length));
}

test("the meal is where trying every minute of the day puts it, and the day around it the same", () => {
  fc.assert(
    fc.property(smallDay, (work) => {
      const order = rowOrder(work);
      const { meal, fromSeconds, untilSeconds } = scheduledDay(work, order);
      expect({ meal, fromSeconds, untilSeconds }).toEqual(everyMinuteTried(work, order));
    }),
    { numRuns: 120 },
  );
});

/** The latest minute up to due, then the soonest after it, at which a meal begins when a step ends and into which none reaches. */
function everyMinuteTried(
  work: DayWork,
  order: readonly number[],
): ReturnType<typeof minuteByMinute> & { meal: MealSpan | null } {
  const unbroken = minuteByMinute(work, order, null);
  if (work.meal === null) return { meal: null, ...unbroken };
  const { dueSeconds, lengthSeconds } = work.meal;
  if (Math.max(...unbroken.untilSeconds) <= dueSeconds) return { meal: null, ...unbroken };
  const triedFrom = [];
  for (let from = dueSeconds; from >= work.callSeconds; from -= 60) triedFrom.push(from);
  for (let from = dueSeconds + 60; from < dueSeconds + 86400; from += 60) triedFrom.push(from);
  for (const from of triedFrom) {
    const meal = { fromSeconds: from, untilSeconds: from + lengthSeconds };
    const day = minuteByMinute(work, order, meal);
    const steps = day.fromSeconds
      .map((start, at) => ({ start, end: day.untilSeconds[at]! }))
      .filter((it) => it.end > it.start);
    const anEnd = steps.some((it) => it.end === from);
    const spanned = steps.some((it) => it.start < meal.untilSeconds && it.end > meal.fromSeconds);
    if (anEnd && !spanned) return { meal, ...day };
  }
  throw new Error("no minute of the day fits the meal");
}

test("nobody is in two places, nothing is over capacity, shots begin in order and no step spans the meal", () => {
  fc.assert(
    fc.property(smallDay, (work) => {
      const day = scheduledDay(work, rowOrder(work));
      const all = [0, 1, 2].flatMap((step) => stepsOf(day, step));
      expect(mostAtOnce(stepsOf(day, 0))).toBeLessThanOrEqual(work.chairs);
      expect(mostAtOnce(stepsOf(day, 1))).toBeLessThanOrEqual(work.dressers);
      expect(mostAtOnce(stepsOf(day, 2))).toBeLessThanOrEqual(work.cameras);
      for (let talent = 0; talent < work.talentCount; talent++) {
        expect(mostAtOnce(all.filter((it) => work.looks[it.look]!.talents.includes(talent)))).toBeLessThanOrEqual(1);
      }
      const shots = work.looks.map((_, look) => day.fromSeconds[look * STEPS_A_LOOK + 2]!);
      expect(shots).toEqual([...shots].sort((a, b) => a - b));
      const meal = day.meal;
      if (meal !== null) {
        expect(all.filter((it) => it.from < meal.untilSeconds && it.until > meal.fromSeconds)).toEqual([]);
        expect(all.map((it) => it.until)).toContain(meal.fromSeconds);
      }
    }),
    { numRuns: 500 },
  );
});

test("with a meal, one dresser more can end the day later, since the meal then falls elsewhere", () => {
  const nobody = {
    talents: [],
    thereSeconds: 32400,
    lastToArrive: -1,
    changeSecondsFrom: null,
    set: -1,
    pieces: [],
    wearers: 0,
    after: [],
    shotAtSeconds: null,
  };
  const looks = [
    { ...nobody, hairMakeupSeconds: 660, changeSeconds: 300, shootingSeconds: 900, makeupFirst: true },
    { ...nobody, hairMakeupSeconds: 0, changeSeconds: 900, shootingSeconds: 600, makeupFirst: true },
    { ...nobody, hairMakeupSeconds: 0, changeSeconds: 900, shootingSeconds: 0, makeupFirst: true },
  ];
  const meal = { dueSeconds: 34200, lengthSeconds: 1800 };
  const one = {
    callSeconds: 32400,
    looks,
    talentCount: 0,
    chairs: 1,
    dressers: 1,
    cameras: 1,
    crossingSeconds: 0,
    pieceCount: 0,
    handOverSeconds: 0,
    meal,
  };
  const two = { ...one, dressers: 2 };
  expect(scheduledDay(one, [0, 1, 2]).endSeconds).toBe(36960);
  expect(scheduledDay(two, [0, 1, 2]).endSeconds).toBe(37500);
  expect(everyMinuteTried(two, [0, 1, 2]).untilSeconds[8]).toBe(37500);
});

test("what was shot stays where it was, was ready by then, and no step spans the meal", () => {
  const shotAts = fc.array(fc.option(fc.integer({ min: 530, max: 700 })), { minLength: 6, maxLength: 6 });
  fc.assert(
    fc.property(smallDay, shotAts, (given, minutes) => {
      const looks = given.looks.map((look, index) => ({
        ...look,
        after: [],
        shotAtSeconds: minutes[index] === null ? null : minutes[index]! * 60,
      }));
      const work = { ...given, looks };
      const shotAt = (index: number): number => looks[index]!.shotAtSeconds ?? Infinity;
      const order = rowOrder(work).sort((a, b) => (shotAt(a) === shotAt(b) ? a - b : shotAt(a) < shotAt(b) ? -1 : 1));
      const day = scheduledDay(work, order);
      looks.forEach((look, index) => {
        const [, , shot] = [0, 1, 2].map((step) => day.fromSeconds[index * STEPS_A_LOOK + step]!);
        if (look.shotAtSeconds !== null) expect(shot).toBe(look.shotAtSeconds);
        for (const step of [0, 1]) expect(day.untilSeconds[index * STEPS_A_LOOK + step]).toBeLessThanOrEqual(shot!);
      });
      const shots = order.map((index) => day.fromSeconds[index * STEPS_A_LOOK + 2]!);
      expect(shots).toEqual([...shots].sort((a, b) => a - b));
      const all = [0, 1, 2].flatMap((step) => stepsOf(day, step));
      const meal = day.meal;
      if (meal !== null)
        expect(all.filter((it) => it.from < meal.untilSeconds && it.until > meal.fromSeconds)).toEqual([]);
    }),
    { numRuns: 500 },
  );
});
