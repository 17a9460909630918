import { atOnce } from "../../../src/domain/plan/atOnce";
import fc from "fast-check";
import { keepsRules } from "../../../src/domain/plan/keepsRules";
import { orderWithin } from "../../../src/domain/plan/orderWithin";
import { shiftedOrder } from "../../../src/domain/plan/shiftedOrder";
import { anyRules } from "./anyRules";
import { ordersKeeping } from "./ordersKeeping";

/** A cost on which no two orders of a few things are likely to agree. */
const costOf = (order: readonly number[]): number =>
  order.reduce((sum, thing, place) => sum + ((thing * 37 + place * 101 + (order[place + 1] ?? 9) * 53) % 97), 0);

test("the order keeps the rules, costs what it says, never more than the start, and at best the least", () => {
  let reached = 0;
  let runs = 0;
  fc.assert(
    fc.property(anyRules, fc.nat(), (rules, seed) => {
      const start = orderWithin(rules);
      if (start === null) return;
      const found = atOnce(shiftedOrder({ ...rules, cost: costOf }, start, { tries: 400, seed, target: -Infinity }));
      expect(keepsRules(rules, found.order)).toBe(true);
      expect(found.cost).toBe(costOf(found.order));
      expect(found.cost).toBeLessThanOrEqual(costOf(start));
      const least = Math.min(...ordersKeeping(rules).map(costOf));
      expect(found.cost).toBeGreaterThanOrEqual(least);
      runs++;
      if (found.cost === least) reached++;
    }),
    { numRuns: 150 },
  );
  expect(reached / runs).toBeGreaterThan(0.8);
});

test("one seed gives one order, and the target ends the search", () => {
  const rules = { count: 30, before: Array.from({ length: 30 }, () => []), placeOf: new Array<number>(30).fill(-1) };
  const start = rules.placeOf.map((_, thing) => thing);
  let costed = 0;
  const task = { ...rules, cost: (order: readonly number[]) => (costed++, costOf(order)) };
  const effort = { tries: 3000, seed: 5, target: -Infinity };
  expect(atOnce(shiftedOrder(task, start, effort))).toEqual(atOnce(shiftedOrder(task, start, effort)));
  expect(costed).toBeLessThanOrEqual(2 * 3000);
  costed = 0;
  atOnce(shiftedOrder(task, start, { ...effort, target: costOf(start) }));
  expect(costed).toBe(1);
});
