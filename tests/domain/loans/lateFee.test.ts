import fc from "fast-check";
import type { LateCharge } from "../../../src/domain/loans/lateCharge";
import { lateFee } from "../../../src/domain/loans/lateFee";
import { sayProblem } from "../../../src/domain/wording";

const worth = (amount: number, currency: string | null = null) => ({ amount, currency });
const charge = (fields: Partial<LateCharge>): LateCharge => ({
  amount: 0,
  isShare: false,
  isOnce: false,
  currency: null,
  ...fields,
});
const daily = (amount: number): LateCharge => charge({ amount, isShare: true });
function says(...args: Parameters<typeof lateFee>): number | string {
  const fee = lateFee(...args);
  return fee.ok ? fee.value : sayProblem(fee.problem);
}

test("a share a day grows by the same amount each day and is not compounded", () => {
  expect([0, 1, 2, 10].map((days) => says(worth(640), days, daily(0.02), null))).toEqual([0, 12.8, 25.6, 128]);
});

test("an amount a day needs no value", () => {
  expect(says(null, 3, charge({ amount: 5 }), null)).toBe(15);
});

test("a charge once is the same from the first day late on, and nothing before", () => {
  const once = charge({ amount: 0.1, isShare: true, isOnce: true });
  expect([0, 1, 30].map((days) => says(worth(640), days, once, null))).toEqual([0, 64, 64]);
});

test("the cap is the most that is asked, as an amount or a share of the value", () => {
  expect(says(worth(640), 60, daily(0.02), charge({ amount: 100, isOnce: true }))).toBe(100);
  expect(says(worth(640), 60, daily(0.02), charge({ amount: 0.5, isShare: true, isOnce: true }))).toBe(320);
  expect(says(worth(640), 2, daily(0.02), charge({ amount: 100, isOnce: true }))).toBe(25.6);
});

test("what is missing leaves nothing to compute from, but 0 days late cost nothing whatever the value", () => {
  expect(says(worth(640), null, daily(0.02), null)).toMatch(/nothing to compute .* fill in daysLate/);
  expect(says(null, 3, daily(0.02), null)).toMatch(/nothing to compute/);
  expect(says(null, 3, charge({ amount: 5 }), charge({ amount: 0.5, isShare: true }))).toMatch(/nothing to compute/);
  expect(says(null, 0, daily(0.02), null)).toBe(0);
});

test("a value below 0 is refused", () => {
  expect(says(worth(-640), 3, daily(0.02), null)).toBe('value: "-640" cannot be used; give an amount of 0 or more.');
});

test("amounts in two currencies are never compared or added", () => {
  const pounds = charge({ amount: 5, currency: "GBP" });
  expect(says(worth(640, "EUR"), 3, pounds, null)).toBe(
    'fee: "5 GBP" cannot be used; give an amount in EUR, as before it.',
  );
  expect(says(worth(640), 3, pounds, charge({ amount: 50, currency: "EUR" }))).toMatch(/^cap: "50 EUR"/);
  expect(says(worth(640, "$"), 3, charge({ amount: 5, currency: "USD" }), null)).toBe(15);
});

test("agrees with adding day by day in whole hundredths of a cent", () => {
  const cents = fc.integer({ min: 0, max: 9_999_999 });
  fc.assert(
    fc.property(cents, fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 400 }), (value, percent, days) => {
      let total = 0;
      for (let day = 0; day < days; day++) total += value * percent;
      expect(says(worth(value / 100), days, daily(percent / 100), null)).toBe(total / 10_000);
    }),
  );
});
