import { readNumberBetween } from "../../src/sheet/readNumberBetween";
import { reads } from "./reads";

test.each([
  [1, 1],
  ["20", 20],
  [200, 200],
  [0, null],
  [null, null],
  [0.5, "argument-not-usable"],
  [201, "argument-not-usable"],
  ["fast", "argument-not-usable"],
  ["1,250", "number-ambiguous"],
])("%j between 1 and 200 is %j", (raw, expected) => {
  expect(reads(readNumberBetween(raw, "kmPerHour", 1, 200))).toBe(expected);
});

test("0 counts where it is allowed", () => expect(reads(readNumberBetween(0, "overlap", 0, 20))).toBe(0));
