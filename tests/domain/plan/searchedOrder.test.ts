import { atOnce } from "../../../src/domain/plan/atOnce";
import fc from "fast-check";
import { dayEnd } from "../../../src/domain/plan/dayEnd";
import { dayOrderSteps } from "../../../src/domain/plan/dayOrderSteps";
import { keepsRules } from "../../../src/domain/plan/keepsRules";
import { nearestOrder } from "../../../src/domain/plan/nearestOrder";
import { orderTowardsGiven } from "../../../src/domain/plan/orderTowardsGiven";
import { orderWithin } from "../../../src/domain/plan/orderWithin";
import { searchedOrder } from "../../../src/domain/plan/searchedOrder";
import { turnedPairs } from "../../../src/domain/plan/turnedPairs";
import { ordersKeeping } from "./ordersKeeping";
import { rulesOfWork } from "./rulesOfWork";
import { smallDay } from "./smallDay";

const fixedPlaces = fc.array(fc.option(fc.nat(5), { freq: 3 }), { minLength: 6, maxLength: 6 });

test("small days are proved best under After and Fixed, and of the best orders the nearest is taken", () => {
  fc.assert(
    fc.property(smallDay, fixedPlaces, (work, places) => {
      const free = rulesOfWork(work);
      const placeOf = free.placeOf.map((_, index) => {
        const place = places[index] ?? -1;
        return place < free.count && places.indexOf(place) === index ? place : -1;
      });
      const rules = { ...free, placeOf };
      const start = orderWithin(rules);
      if (start === null) return;
      const task = { ...rules, cost: (order: readonly number[]) => dayEnd(work, order) };
      const orders = ordersKeeping(rules).map((order) => ({ end: dayEnd(work, order), turned: turnedPairs(order) }));
      const least = Math.min(...orders.map(({ end }) => end));
      const best = atOnce(searchedOrder(task, dayOrderSteps(work), start, { tries: 200, beginnings: 20_000, seed: 1 }));
      expect([best.cost, best.bound, dayEnd(work, best.order)]).toEqual([least, least, least]);

      const moved = atOnce(orderTowardsGiven(task, best.order, 1000));
      expect(turnedPairs(moved)).toBeLessThanOrEqual(turnedPairs(best.order));
      const nearest = atOnce(nearestOrder(task, dayOrderSteps(work), best.order, 1000, 1000));
      for (const order of [moved, nearest]) {
        expect(keepsRules(rules, order)).toBe(true);
        expect(dayEnd(work, order)).toBe(least);
      }
      const fewest = Math.min(...orders.filter(({ end }) => end === least).map(({ turned }) => turned));
      expect(turnedPairs(nearest)).toBe(fewest);
    }),
    { numRuns: 250 },
  );
});

test("without any effort the start comes back, with a bound that holds", () => {
  fc.assert(
    fc.property(smallDay, (work) => {
      const rules = rulesOfWork(work);
      const task = { ...rules, cost: (order: readonly number[]) => dayEnd(work, order) };
      const start = orderWithin(rules)!;
      const found = atOnce(searchedOrder(task, dayOrderSteps(work), start, { tries: 1, beginnings: 0, seed: 1 }));
      expect(found.order).toEqual(start);
      expect(found.bound).toBeLessThanOrEqual(Math.min(...ordersKeeping(rules).map((order) => dayEnd(work, order))));
    }),
    { numRuns: 150 },
  );
});
