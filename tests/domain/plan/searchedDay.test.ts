import { atOnce } from "../../../src/domain/plan/atOnce";
import fc from "fast-check";
import { beginsInTime } from "../../../src/domain/plan/beginsInTime";
import { dayEnd } from "../../../src/domain/plan/dayEnd";
import { orderWithin } from "../../../src/domain/plan/orderWithin";
import { searchedDay } from "../../../src/domain/plan/searchedDay";
import { timedSteps } from "../../../src/domain/plan/timedSteps";
import { ordersKeeping } from "./ordersKeeping";
import { rulesOfWork } from "./rulesOfWork";
import { smallDay } from "./smallDay";

test("a small day, with its meal or without, is found and proved as trying all orders finds it", () => {
  fc.assert(
    fc.property(smallDay, (work) => {
      const rules = rulesOfWork(work);
      const least = Math.min(...ordersKeeping(rules).map((order) => dayEnd(work, order)));
      const found = atOnce(searchedDay(work, rules, orderWithin(rules)!, { tries: 200, beginnings: 20_000, seed: 1 }));
      expect([dayEnd(work, found.order), found.cost, found.bound]).toEqual([least, least, least]);
    }),
    { numRuns: 400 },
  );
});

test("with little effort the bound still holds and the day ends no later than given", () => {
  fc.assert(
    fc.property(smallDay, (work) => {
      const rules = rulesOfWork(work);
      const start = orderWithin(rules)!;
      const found = atOnce(searchedDay(work, rules, start, { tries: 4, beginnings: 60, seed: 1 }));
      expect(found.bound).toBeLessThanOrEqual(Math.min(...ordersKeeping(rules).map((order) => dayEnd(work, order))));
      expect(found.cost).toBeLessThanOrEqual(dayEnd(work, start));
    }),
    { numRuns: 300 },
  );
});

test("whichever look is first, a step of its ends in time, where that is said", () => {
  fc.assert(
    fc.property(smallDay, fc.integer({ min: 540, max: 600 }), (work, minute) => {
      if (!beginsInTime(work, minute * 60)) return;
      work.looks.forEach((_, first) => {
        const { fromSeconds, untilSeconds } = timedSteps(work, [first], null);
        const ends = untilSeconds.filter((until, step) => until > fromSeconds[step]!);
        expect(Math.min(...ends)).toBeLessThanOrEqual(minute * 60);
      });
    }),
    { numRuns: 300 },
  );
});
