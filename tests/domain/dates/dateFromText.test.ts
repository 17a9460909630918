import { dateFromText } from "../../../src/domain/dates/dateFromText";

test.each([
  ["2026-03-05", 46086],
  ["by Friday", "date-not-understood"],
  ["03/04/26", "date-ambiguous"],
  ["25/12/26", "date-figures-only"],
  ["5 Mar 2026 18:00", 46086.75],
  ["Fri 5 Mar 2026", "argument-not-usable"],
])("%s", (text, expected) => {
  const outcome = dateFromText(text, "terms");
  expect(outcome.ok ? outcome.value : outcome.problem.reason).toBe(expected);
});
