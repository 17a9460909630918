import fc from "fast-check";
import { readDay } from "../../src/checks/readDay";
import { day } from "./day";

test.each([
  [day("2026-03-05"), "day"],
  [day("2026-03-05") + 0.5, "day"],
  [1, "day"],
  [2958465, "day"],
  [2958466, "no day"],
  [-1, "no day"],
  [0.5, "no day"],
  [NaN, "no day"],
  [0, "blank"],
  [null, "blank"],
  [undefined, "blank"],
  ["  ", "blank"],
  ["2026-03-05", "text"],
  ["5 Mar 2026", "text"],
  ["25/12/2026", "text"],
  ["03/04/26", "two days"],
  ["Mon 5 Mar 2026", "wrong weekday"],
  ["tbc", "undecided"],
  ["TBC?", "undecided"],
  ["—", "undecided"],
  ["à confirmer", "undecided"],
  ["soon", "no day"],
  [true, "no day"],
  [{ error: "#N/A" }, "error"],
])("%p says: %s", (raw, expected) => {
  expect(readDay(raw).is).toBe(expected);
});

test("a text that can be one day only says which", () => {
  expect(readDay("25/12/2026")).toMatchObject({ day: day("2026-12-25") });
  expect(readDay("03/04/26")).toMatchObject({ first: day("2026-04-03"), second: day("2026-03-04") });
});

test("never throws, whatever the cell holds", () => {
  fc.assert(fc.property(fc.anything(), (raw) => void readDay(raw)));
});
