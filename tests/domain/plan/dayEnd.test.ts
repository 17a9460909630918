import fc from "fast-check";
import { dayEnd } from "../../../src/domain/plan/dayEnd";
import { scheduledDay } from "../../../src/domain/plan/scheduledDay";
import { smallDay } from "./smallDay";

test("the end of the day is that of the whole schedule, meal kept, in any order that keeps After", () => {
  fc.assert(
    fc.property(smallDay, (work) => {
      const order = work.looks.map((_, index) => index);
      expect(dayEnd(work, order)).toBe(scheduledDay(work, order).endSeconds);
      const turned = { ...work, looks: work.looks.map((look) => ({ ...look, after: [] })) };
      order.reverse();
      expect(dayEnd(turned, order)).toBe(scheduledDay(turned, order).endSeconds);
    }),
    { numRuns: 1500 },
  );
});

test("so it is where looks have been shot already", () => {
  fc.assert(
    fc.property(smallDay, fc.integer({ min: 540, max: 640 }), (given, minute) => {
      const looks = given.looks.map((look, index) => (index > 0 ? look : { ...look, shotAtSeconds: minute * 60 }));
      const work = { ...given, looks };
      const order = looks.map((_, index) => index);
      expect(dayEnd(work, order)).toBe(scheduledDay(work, order).endSeconds);
    }),
    { numRuns: 500 },
  );
});
