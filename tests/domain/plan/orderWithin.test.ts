import fc from "fast-check";
import { keepsRules } from "../../../src/domain/plan/keepsRules";
import { orderWithin } from "../../../src/domain/plan/orderWithin";
import { anyRules } from "./anyRules";
import { ordersKeeping } from "./ordersKeeping";

test("things stay as they are numbered where that keeps the rules", () => {
  expect(orderWithin({ count: 3, before: [[], [0], []], placeOf: [-1, -1, 2] })).toEqual([0, 1, 2]);
});

test("there is an order exactly where trying all of them finds one, and it keeps the rules", () => {
  fc.assert(
    fc.property(anyRules, (rules) => {
      const order = orderWithin(rules);
      expect(order === null).toBe(ordersKeeping(rules).length === 0);
      if (order !== null) expect(keepsRules(rules, order)).toBe(true);
    }),
    { numRuns: 400 },
  );
});

test("two that must come before the second place leave no order", () => {
  expect(orderWithin({ count: 3, before: [[], [], [0, 1]], placeOf: [-1, -1, 1] })).toBeNull();
});

test("thousands of things are ordered, one of them last", () => {
  const count = 3000;
  const placeOf = Array.from({ length: count }, (_, thing) => (thing === 7 ? count - 1 : -1));
  expect(orderWithin({ count, before: placeOf.map(() => []), placeOf })!.at(-1)).toBe(7);
});
