import fc from "fast-check";
import { figuresFromText } from "../../src/sheet/figuresFromText";

test.each([
  ["12", 12],
  ["012", 12],
  ["12.5", 12.5],
  ["12,5", 12.5],
  [".5", 0.5],
  ["1,234,567", 1234567],
  ["1.234.567,89", 1234567.89],
  ["1,234.5", 1234.5],
  ["1 234", 1234],
  ["1'234.50", 1234.5],
  ["0.250", 0.25],
  ["1234.567", 1234.567],
])("%s reads one way: %d", (text, amount) => expect(figuresFromText(text)).toEqual({ reads: "one way", amount }));

test.each([
  ["1,234", 1234, 1.234],
  ["12.345", 12345, 12.345],
  ["100,000", 100000, 100],
])("%s reads two ways: %d and %d", (text, grouped, decimal) =>
  expect(figuresFromText(text)).toEqual({ reads: "two ways", grouped, decimal }),
);

test.each([
  "",
  ".",
  ",",
  "1,23,456",
  "1.23.456",
  "1,2,3",
  "1.2.3",
  "1 23",
  "12 34",
  "1,234.567.8",
  "1.234,567,8",
  "5.",
  "1e3",
  "-1",
  "½",
  "1".repeat(31),
])("%j is no number", (text) => expect(figuresFromText(text)).toBeNull());

test("grouped figures with a decimal part read as without the groups", () => {
  const sign = fc.constantFrom([",", "."], [".", ","], [" ", ","], ["'", "."], ["\u202f", ","]);
  fc.assert(
    fc.property(
      fc.integer({ min: 1000, max: 999_999_999 }),
      fc.integer({ min: 0, max: 99 }),
      sign,
      (whole, cents, [group, point]) => {
        const digits = String(whole).replace(/\B(?=(\d{3})+$)/g, group!);
        const text = `${digits}${point}${String(cents).padStart(2, "0")}`;
        expect(figuresFromText(text)).toEqual({
          reads: "one way",
          amount: Number(`${whole}.${String(cents).padStart(2, "0")}`),
        });
      },
    ),
  );
});
