import { readLateCharge } from "../../src/sheet/readLateCharge";
import { reads } from "./reads";

const share = (amount: number, isOnce = false) => ({ amount, isShare: true, isOnce, currency: null });
const money = (amount: number, currency: string | null = null, isOnce = false) => ({
  amount,
  isShare: false,
  isOnce,
  currency,
});

describe("a fee for lateness is read from", () => {
  test.each([
    [0.02, share(0.02)],
    [0, share(0)],
    [{ type: "Double", basicValue: 0.02, numberFormat: "0%" }, share(0.02)],
    ["2% a day", share(0.02)],
    ["2 % per day", share(0.02)],
    ["2%/day", share(0.02)],
    ["2% daily", share(0.02)],
    ["2,5 % pro Tag", share(0.025)],
    ["2.5% par jour", share(0.025)],
    ["2% al giorno", share(0.02)],
    ["2% por día", share(0.02)],
    ["2% of the value a day", share(0.02)],
    ["2% of value per calendar day", share(0.02)],
    ["2%", share(0.02)],
    ["0.02", share(0.02)],
    ["150% once", share(1.5, true)],
    ["5 a day", money(5)],
    ["£5 a day", money(5, "GBP")],
    ["5 € / jour", money(5, "EUR")],
    ["CHF 7.50 p.d.", money(7.5, "CHF")],
    ["€1.250,00 each day late", money(1250, "EUR")],
    ["10% once", share(0.1, true)],
    ["10% one-off", share(0.1, true)],
    ["10% flat fee", share(0.1, true)],
    ["25 once", money(25, null, true)],
    ["25 EUR einmalig", money(25, "EUR", true)],
    ["25 € une fois", money(25, "EUR", true)],
  ])("%j", (raw, expected) => expect(reads(readLateCharge(raw, "fee"))).toEqual(expected));
});

describe("a cap is read from", () => {
  test.each([
    [50, money(50, null, true)],
    ["£50", money(50, "GBP", true)],
    ["50%", share(0.5, true)],
    ["100% of the value", share(1, true)],
    ["100 % vom Wert", share(1, true)],
  ])("%j", (raw, expected) => expect(reads(readLateCharge(raw, "cap", true))).toEqual(expected));
});

test.each([
  5,
  1,
  -0.1,
  NaN,
  Infinity,
  true,
  "5",
  "£5",
  "5 a week",
  "2% per working day",
  "5% a month",
  "-5 a day",
  "-2% a day",
  "a day",
  "once",
  "ask",
  "2% or 5 a day",
  "5-10 a day",
])("%j is no fee that says what is asked and how often", (raw) => {
  expect(reads(readLateCharge(raw, "fee"))).toBe("argument-not-usable");
});

test.each([1, 0.5, -5, "-50%", "the price", true])("%j is no cap", (raw) => {
  expect(reads(readLateCharge(raw, "cap", true))).toBe("argument-not-usable");
});

test("blank is null, and in a cap 0 is blank, as some hosts send it", () => {
  for (const raw of [null, undefined, "", " "]) expect(reads(readLateCharge(raw, "fee"))).toBeNull();
  for (const raw of [null, undefined, "", 0]) expect(reads(readLateCharge(raw, "cap", true))).toBeNull();
});

test("an error value is a problem of its own", () => {
  expect(reads(readLateCharge({ type: "Error", basicValue: "#N/A" }, "fee"))).toBe("error-in-cell");
});
