import type { CellEdit } from "../../../src/sheet/cellEdit";
import { fixesTogether } from "../../../src/pane/check/fixesTogether";
import { sayEdit } from "../../../src/pane/check/sayEdit";
import { finding } from "./finding";

const edit = (row: number, value: number): CellEdit => ({
  at: { sheetId: "s0", row, column: 4 },
  expected: "x",
  value,
});
const fixable = (id: string, ...edits: readonly CellEdit[]) => ({
  id,
  key: id,
  finding: finding({ fix: { label: id, edits } }),
});

test("all fixes become one list of edits, and findings without a fix are passed over", () => {
  const none = { id: "n", key: "n", finding: finding({}) };
  expect(fixesTogether([fixable("a", edit(1, 5)), none, fixable("b", edit(2, 6), edit(3, 7))])).toEqual({
    edits: [edit(1, 5), edit(2, 6), edit(3, 7)],
    leftOut: 0,
  });
});

test("a fix that would write a cell twice is left out whole and counted", () => {
  expect(fixesTogether([fixable("a", edit(1, 5)), fixable("b", edit(2, 6), edit(1, 9))])).toEqual({
    edits: [edit(1, 5)],
    leftOut: 1,
  });
});

test.each([
  [
    "text that becomes a date",
    { ...edit(1, 46086), expected: "5 Mar 2026", numberFormat: "yyyy-mm-dd" },
    false,
    '"5 Mar 2026"',
    "2026-03-05",
  ],
  ["a date cell", { ...edit(1, 46086), expected: 46085 }, true, "2026-03-04", "2026-03-05"],
  ["a plain number", { ...edit(1, 1250), expected: "£1,250" }, false, '"£1,250"', "1250"],
  [
    "a blank that gets a formula",
    { ...edit(1, 0), expected: null, value: null, formula: "=TACK.DUE(A2,B2)" },
    true,
    "blank",
    "=TACK.DUE(A2,B2)",
  ],
  ["a formula that is replaced", { ...edit(1, 5), expectedFormula: "=A1" }, false, "=A1", "5"],
  ["an error", { ...edit(1, 5), expected: { error: "#N/A" } }, false, "#N/A", "5"],
])("the preview shows %s as the user knows it", (_, given, isDate, before, after) => {
  expect(sayEdit(given, isDate)).toEqual({ before, after });
});
