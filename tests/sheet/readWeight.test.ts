import { readWeight } from "../../src/sheet/readWeight";
import { reads } from "./reads";

test.each([
  ["1.2kg", 1200],
  ["1.2 kg", 1200],
  ["1,2 kg", 1200],
  ["1.2 KG.", 1200],
  ["800 g", 800],
  ["800gr", 800],
  ["1 kg 200 g", 1200],
  ["1 kilo", 1000],
  ["1,5 Kilogramm", 1500],
  // No piece weighs a thousand kilograms, nobody weighs to a thousandth of a gram.
  ["1.250 kg", 1250],
  ["1,250 g", 1250],
  // The international yard and pound agreement of 1959: 1 lb = 453.59237 g, 1 oz = 28.349523125 g.
  ["1 lb", 453.59237],
  ["2 lbs", 907.18474],
  ["2 lb 3 oz", 992.233309],
  ["16 oz", 453.59237],
  ["1 once", 28.349523],
])("%s weighs %d g", (text, grams) =>
  expect(reads(readWeight(text, "weight"))).toEqual({ grams, bareAmount: null, isGuess: false }),
);

test.each([
  [1.2, 1.2],
  [0, 0],
  ["1.2", 1.2],
  ["1,2", 1.2],
  ["3", 3],
])("%j is in the column's own unit", (raw, bareAmount) =>
  expect(reads(readWeight(raw, "weight"))).toEqual({ grams: null, bareAmount, isGuess: false }),
);

test.each([
  [null, null],
  [" ", null],
  ["1,250", "number-ambiguous"],
  [-1, "argument-not-usable"],
  ["-1 kg", "argument-not-usable"],
  ["heavy", "argument-not-usable"],
  ["1.2 tons", "argument-not-usable"],
  ["2 st", "argument-not-usable"],
  ["1 Pfund", "argument-not-usable"],
  ["kg", "argument-not-usable"],
  ["1 kg 2", "argument-not-usable"],
  ["1 kg 2 lb 3 oz", "argument-not-usable"],
  [true, "argument-not-usable"],
  [{ error: "#N/A" }, "error-in-cell"],
])("%j reads as %j", (raw, value) => expect(reads(readWeight(raw, "weight"))).toBe(value));

test.each([
  ["approx 2kg", 2000],
  ["approx. 2 kg", 2000],
  ["ca. 850 g", 850],
  ["c. 900g", 900],
  ["~1,5 kg", 1500],
  ["about 2 lb", 907.18474],
  ["2kg est.", 2000],
  ["1½ kg approx", 1500],
])("%s weighs %d g, and is a guess", (text, grams) =>
  expect(reads(readWeight(text, "weight"))).toEqual({ grams, bareAmount: null, isGuess: true }),
);

test.each([
  ["½ kg", 500],
  ["1½ kg", 1500],
  ["1 1/2 lb", 680.388555],
])("%s weighs %d g", (text, grams) =>
  expect(reads(readWeight(text, "weight"))).toEqual({ grams, bareAmount: null, isGuess: false }),
);

test.each(["1-2 kg", "2 x 1.2 kg", "<1kg", "light", "approx", "c", "1.2 kg / 2.6 lb", "2.5 k"])(
  "%s is refused",
  (text) => expect(reads(readWeight(text, "weight"))).toBe("argument-not-usable"),
);
