import fc from "fast-check";
import { dayEnd } from "../../../src/domain/plan/dayEnd";
import { easedArrivals } from "../../../src/domain/plan/easedArrivals";
import { scheduledDay } from "../../../src/domain/plan/scheduledDay";
import { timedSteps } from "../../../src/domain/plan/timedSteps";
import { smallDay } from "./smallDay";

test("a day with its meal in time ends no sooner than the eased day without one, and the meal's length", () => {
  let counted = 0;
  fc.assert(
    fc.property(smallDay, (given) => {
      const work = { ...given, cameras: 1 };
      const order = work.looks.map((_, index) => index);
      const { meal } = scheduledDay(work, order);
      if (work.meal === null || meal === null || meal.fromSeconds > work.meal.dueSeconds) return;
      counted++;
      const eased = easedArrivals(work, work.meal);
      const { endSeconds } = timedSteps(eased, order, null);
      expect(dayEnd(work, order)).toBeGreaterThanOrEqual(endSeconds + work.meal.lengthSeconds);
    }),
    { numRuns: 1500 },
  );
  expect(counted).toBeGreaterThan(100);
});

test("where everybody is there at call nothing is eased", () => {
  fc.assert(
    fc.property(smallDay, (given) => {
      const work = { ...given, looks: given.looks.map((look) => ({ ...look, thereSeconds: given.callSeconds })) };
      expect(easedArrivals(work, { dueSeconds: given.callSeconds + 7200, lengthSeconds: 1800 })).toBe(work);
    }),
  );
});
