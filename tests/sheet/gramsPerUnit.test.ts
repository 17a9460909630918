import { gramsPerUnit } from "../../src/sheet/gramsPerUnit";

test.each([
  ["kg", 1000],
  ["KG", 1000],
  ["kilos", 1000],
  ["Kilogramm", 1000],
  ["g", 1],
  ["gr.", 1],
  ["grammes", 1],
  // International yard and pound agreement, 1959: exact.
  ["lb", 453.59237],
  ["lbs", 453.59237],
  ["oz", 28.349523125],
  ["ounces", 28.349523125],
])("one %s is %d g", (unit, grams) => expect(gramsPerUnit(unit)).toBe(grams));

test("sixteen ounces are a pound", () => expect(16 * gramsPerUnit("oz")!).toBe(gramsPerUnit("lb")));

// A Pfund is half a kilogram in some shops and a pound in others.
test.each(["", "Pfund", "st", "t", "mg", "m", "£"])("%j is no unit of weight here", (unit) =>
  expect(gramsPerUnit(unit)).toBeNull(),
);
