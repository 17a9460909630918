import fc from "fast-check";
import { keepCost } from "../../../src/domain/value/keepCost";

test("is nothing when as much is kept as the shop asks, or more", () => {
  expect(keepCost(1000, 300, 0.3, 0.2)).toBe(0);
  expect(keepCost(1000, 1000, 0.3, 0.2)).toBe(0);
  // In binary fractions 0.07 of 100 is a little over 7.
  expect(keepCost(100, 7, 0.07, 1)).toBe(0);
  expect(keepCost(0, 0, 1, 1)).toBe(0);
});

test("is the share of what is short", () => {
  // By hand: 30% of 5000 is 1500, 700 short, of which 20% is 140.
  expect(keepCost(5000, 800, 0.3, 0.2)).toBe(140);
  expect(keepCost(5000, 0, 0.3, 0.2)).toBe(300);
  expect(keepCost(1000, 200, 1, 0.15)).toBe(120);
});

test("falls as more is kept, never below 0, and is the rule in whole hundredths", () => {
  const cents = fc.integer({ min: 0, max: 10_000_000 });
  const percent = fc.integer({ min: 0, max: 100 });
  fc.assert(
    fc.property(cents, cents, percent, percent, (taken, kept, keep, restock) => {
      // Percent of percent of cents is a ten-thousandth of a cent, and all of it is whole.
      const short = keep * taken - kept * 100;
      const exact = short <= 0 ? 0 : (restock * short) / 1_000_000;
      const cost = keepCost(taken / 100, kept / 100, keep / 100, restock / 100);
      expect(Math.abs(cost - exact)).toBeLessThanOrEqual(0.0001);
      expect(keepCost(taken / 100, kept / 100 + 1, keep / 100, restock / 100)).toBeLessThanOrEqual(cost);
    }),
  );
});
