import { atOnce } from "../../../src/domain/plan/atOnce";
import fc from "fast-check";
import { dayEnd } from "../../../src/domain/plan/dayEnd";
import { dayOrderSteps } from "../../../src/domain/plan/dayOrderSteps";
import type { DayWork } from "../../../src/domain/plan/dayWork";
import { firstBound } from "../../../src/domain/plan/firstBound";
import { layeredOrder } from "../../../src/domain/plan/layeredOrder";
import type { OrderTrail } from "../../../src/domain/plan/orderTrail";
import { ordersKeeping } from "./ordersKeeping";
import { rulesOfWork } from "./rulesOfWork";
import { smallDay } from "./smallDay";

/** Small days, some of whose first looks have been shot already. */
const anyDay: fc.Arbitrary<DayWork> = fc
  .tuple(smallDay, fc.oneof({ weight: 5, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.constantFrom(1, 2) }))
  .map(([day, shot]) => ({
    ...day,
    looks: day.looks.map((look, index) =>
      index < shot ? { ...look, shotAtSeconds: day.callSeconds + 1200 * (index + 1) } : look,
    ),
  }));

test("a layered search that drops nothing finds and proves the best of all orders", () => {
  fc.assert(
    fc.property(anyDay, (work) => {
      const rules = rulesOfWork(work);
      const least = Math.min(...ordersKeeping(rules).map((order) => dayEnd(work, order)));
      const found = atOnce(layeredOrder(rules, dayOrderSteps(work), Infinity, Infinity));
      expect(dayEnd(work, found.order!)).toBe(least);
      expect(found.bound).toBe(least);
      expect(atOnce(layeredOrder(rules, dayOrderSteps(work), least, Infinity))).toMatchObject({
        order: null,
        bound: least,
      });
    }),
    { numRuns: 500 },
  );
});

test("one that keeps few beginnings says no false bound, and no order that ends otherwise than it says", () => {
  fc.assert(
    fc.property(anyDay, fc.constantFrom(1, 2, 4), (work, width) => {
      const rules = rulesOfWork(work);
      const least = Math.min(...ordersKeeping(rules).map((order) => dayEnd(work, order)));
      const found = atOnce(layeredOrder(rules, dayOrderSteps(work), Infinity, width));
      expect(found.bound).toBeLessThanOrEqual(least);
      expect(firstBound(rules, dayOrderSteps(work))).toBeLessThanOrEqual(least);
      if (found.order !== null) expect(dayEnd(work, found.order)).toBeGreaterThanOrEqual(least);
    }),
    { numRuns: 300 },
  );
});

test("at every beginning of every order the bound is not above what that order costs, and at its end is just that", () => {
  fc.assert(
    fc.property(anyDay, fc.nat(), (work, which) => {
      const steps = dayOrderSteps(work);
      const orders = ordersKeeping(rulesOfWork(work));
      const order = orders[which % orders.length]!;
      const end = dayEnd(work, order);
      let state = steps.open;
      let trail: OrderTrail | null = null;
      order.forEach((thing, place) => {
        trail = { thing, before: trail };
        const left = order.slice(place + 1).sort((a, b) => a - b);
        state = steps.next(state, trail, left, Infinity)!;
        expect(steps.bound(state)).toBeLessThanOrEqual(end);
      });
      expect(steps.bound(state)).toBe(end);
    }),
    { numRuns: 1500 },
  );
});
