import { fail } from "../../src/domain/fail";
import { succeed } from "../../src/domain/succeed";
import { answerTable } from "../../src/functions/answerTable";
import { HostError } from "./HostError";
import { standInHost } from "./standInHost";

let takeAway = (): void => {};
afterEach(() => takeAway());

test("the heading row stands alone when no row matches", () => {
  expect(answerTable(succeed({ headings: ["Lender", "Due"], formats: ["as is", "date"], rows: [] }))).toEqual([
    ["Lender", "Due"],
  ]);
});

test("each column has its own format, and blanks are empty texts", () => {
  takeAway = standInHost("Double");
  const rows = [["Orla", 46083, null]];
  expect(
    answerTable(succeed({ headings: ["Lender", "Due", "Note"], formats: ["as is", "date", "as is"], rows })),
  ).toEqual([
    ["Lender", "Due", "Note"],
    ["Orla", { type: "Double", basicValue: 46083, numberFormat: "yyyy-mm-dd" }, ""],
  ]);
});

test("an error stands in its own cell and the other rows survive", () => {
  takeAway = standInHost();
  const rows = [
    [1, { reason: "error-in-cell", facts: { argument: "Due, row 2", given: "#REF!" } } as const],
    [2, 3],
  ];
  const table = answerTable(succeed({ headings: ["A", "B"], formats: ["as is", "as is"], rows }));
  expect(table[1]![1]).toBeInstanceOf(HostError);
  expect(table[2]).toEqual([2, 3]);
});

test("a table that cannot be made throws one error with its sentence", () => {
  takeAway = standInHost();
  expect(() => answerTable(fail("argument-missing", { argument: "rows", expected: "the table" }))).toThrow(
    "rows is blank; give the table.",
  );
});
