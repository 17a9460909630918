import fc from "fast-check";
import { readNumber } from "../../src/sheet/readNumber";
import { reads } from "./reads";

test.each([
  [12.5, 12.5],
  [-3, -3],
  ["12.5", 12.5],
  ["12,5", 12.5],
  ["-3.5", -3.5],
  ["1,250.00", 1250],
  ["1.250,00", 1250],
  ["1 250", 1250],
  ["12.5%", 0.125],
  ["12.5 %", 0.125],
  ["0.125", 0.125],
  ["1.2500", 1.25],
  ["1234.567", 1234.567],
  [null, null],
  ["", null],
  ["1,250", "number-ambiguous"],
  ["-1.250", "number-ambiguous"],
  ["1.2.3", "argument-not-usable"],
  ["1,2,3", "argument-not-usable"],
  ["abc", "argument-not-usable"],
  ["1e3", "argument-not-usable"],
  [true, "argument-not-usable"],
  [Infinity, "argument-not-usable"],
  [NaN, "argument-not-usable"],
  [{ error: "#N/A" }, "error-in-cell"],
])("%j reads as %j", (raw, value) => expect(reads(readNumber(raw, "limit"))).toBe(value));

test("both readings of 1,250 are named", () => {
  expect(readNumber("1,250", "limit")).toEqual({
    ok: false,
    problem: {
      reason: "number-ambiguous",
      facts: { argument: "limit", given: "1,250", first: "1250", second: "1.25" },
    },
  });
});

test("any number kept as text with one or two decimals reads back", () => {
  fc.assert(
    fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 1, max: 2 }), (whole, decimals) => {
      const value = whole / 10 ** decimals;
      expect(reads(readNumber(value.toFixed(decimals), "limit"))).toBe(value || 0);
      expect(reads(readNumber(value.toFixed(decimals).replace(".", ","), "limit"))).toBe(value || 0);
    }),
  );
});
