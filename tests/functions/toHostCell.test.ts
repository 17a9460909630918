import { sayProblem } from "../../src/domain/wording";
import type { Problem } from "../../src/domain/problem";
import { toHostCell } from "../../src/functions/toHostCell";
import { HostError } from "./HostError";
import { standInHost } from "./standInHost";

const problem: Problem = { reason: "nothing-to-compute", facts: { what: "a total", fill: "value" } };
let takeAway = (): void => {};
afterEach(() => takeAway());

test("texts and truth values stay as they are, and blank is an empty text", () => {
  expect(["late", "", true, false, null].map((cell) => toHostCell(cell))).toEqual(["late", "", true, false, ""]);
});

test("a date is a plain number where the host has announced no way to carry a format", () => {
  takeAway = standInHost(undefined);
  expect(toHostCell(46083, "date")).toBe(46083);
});

test.each(["Double", "FormattedNumber"] as const)("a date, a time and money carry their format as a %s", (numbers) => {
  takeAway = standInHost(numbers);
  expect(toHostCell(46083, "date")).toEqual({ type: numbers, basicValue: 46083, numberFormat: "yyyy-mm-dd" });
  expect(toHostCell(0.5, "time")).toEqual({ type: numbers, basicValue: 0.5, numberFormat: "hh:mm" });
  expect(toHostCell(12.5, "money")).toEqual({ type: numbers, basicValue: 12.5, numberFormat: "#,##0.00" });
  expect(toHostCell(12.5)).toBe(12.5);
});

test("a time past midnight goes on counting, and midnight at the end of the day is 24:00", () => {
  takeAway = standInHost("Double");
  expect(toHostCell(0, "time")).toMatchObject({ numberFormat: "hh:mm" });
  expect(toHostCell(1, "time")).toMatchObject({ numberFormat: "[h]:mm" });
  expect(toHostCell(1.0625, "time")).toMatchObject({ numberFormat: "[h]:mm" });
});

test("a text in a column of dates stays a text", () => {
  takeAway = standInHost("Double");
  expect(toHostCell("tbc", "date")).toBe("tbc");
});

test("a problem is the host's error, with its code and sentence", () => {
  takeAway = standInHost();
  expect(toHostCell(problem)).toEqual(new HostError("#N/A", sayProblem(problem)));
});

test("a number that is not finite is an error and never a 0", () => {
  takeAway = standInHost();
  for (const cell of [NaN, Infinity, -Infinity]) expect(toHostCell(cell)).toMatchObject({ code: "#VALUE!" });
});
