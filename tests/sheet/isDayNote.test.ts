import { isDayNote } from "../../src/sheet/isDayNote";

test.each([
  [["Call", 8 / 24]],
  [[null, "Citación", "08:30", null]],
  [["Wrap", "18.30"]],
  [["Shoot date", 46112, ""]],
  [["Insurance limit", "£120,000"]],
])("%j is a note of the day", (row) => {
  expect(isDayNote(row)).toBe(true);
});

test.each([
  [["Call", "asap"]],
  [["Call", null]],
  [["Call", 8 / 24, "Mirela"]],
  [["Call", null, 8 / 24]],
  [["Camel coat", 0.5]],
  [[7, 0.5]],
  [["Call"]],
  [[]],
])("%j is none", (row) => {
  expect(isDayNote(row)).toBe(false);
});

test("only the columns asked about count", () => {
  expect(isDayNote(["note", "Call", 0.5, "note"])).toBe(false);
  expect(isDayNote(["note", "Call", 0.5, "note"], 1, 3)).toBe(true);
});
