import { readKept } from "../../src/sheet/readKept";
import { says } from "./says";

test.each<[raw: unknown, kept: unknown]>([
  [null, null],
  ["", null],
  [true, true],
  ["Yes", true],
  ["✓", true],
  ["no", false],
  [0, 0],
  // A number is an amount, though 1 says yes elsewhere.
  [1, 1],
  ["1", 1],
  ["£30.50", 30.5],
])("%j is %j", (raw, kept) => {
  expect(readKept(raw, "Kept")).toEqual({ ok: true, value: kept });
});

test.each([-5, "-5", "some", "2 of 3", "30%"])("%j is refused, with what may stand there", (raw) => {
  expect(says(readKept(raw, "Kept"))).toBe(`Kept: "${raw}" cannot be used; give yes, no or an amount of 0 or more.`);
});
