import { readRefunded } from "../../src/sheet/readRefunded";
import { says } from "./says";

test.each<[raw: unknown, refunded: unknown]>([
  [null, null],
  ["", null],
  [0, null],
  [46083.75, 46083],
  ["2026-03-02", 46083],
  [true, true],
  [false, null],
  ["yes", true],
  ["no", false],
])("%j is %j", (raw, refunded) => {
  expect(readRefunded(raw, "Refunded")).toEqual({ ok: true, value: refunded });
});

test("an amount is refused, since it would be a day long past", () => {
  expect(says(readRefunded(40, "Refunded"))).toBe(
    'Refunded: "40" cannot be used; give the day it was refunded, or yes; amounts belong under Amount refunded.',
  );
  expect(says(readRefunded(-40, "Refunded"))).toContain('"-40" cannot be used');
});

test("text that is no day and no yes or no is a problem", () => {
  expect(says(readRefunded("03/04/26", "Refunded"))).toContain('"03/04/26" could be');
  expect(says(readRefunded("half", "Refunded"))).toContain('"half" is not a date');
});
