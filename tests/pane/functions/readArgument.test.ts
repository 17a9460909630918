import type { ParamDoc } from "../../../src/pane/functions/FunctionDoc";
import { readArgument } from "../../../src/pane/functions/readArgument";
import type { WorkbookSnapshot } from "../../../src/sheet/sheetSnapshot";

const values = [
  ["Piece", "Date out", "Value [£]"],
  ["coat", 46080, 900],
  ["boots", 46081, null],
];
const workbook: WorkbookSnapshot = {
  name: "Job",
  dateSystem: 1900,
  sheets: [
    {
      sheetId: "s0",
      name: "My loans",
      visible: true,
      isProtected: false,
      firstRow: 3,
      firstColumn: 1,
      values,
      formulas: values.map((row) => row.map(() => null)),
      tables: [{ name: "Loans", row: 3, column: 1, rowCount: 3, columnCount: 3 }],
    },
  ],
};
const param = (matrix: boolean): ParamDoc => ({ name: matrix ? "rows" : "out", optional: false, matrix, text: "" });
const read = (typed: string, matrix = false, row: number | null = 5) =>
  readArgument(typed, param(matrix), {
    workbook,
    today: 46086,
    home: row === null ? null : { sheetId: "s0", row, column: 9 },
  });

test.each([
  ["7 days", '"7 days"', "7 days"],
  ["2026-03-05", '"2026-03-05"', "2026-03-05"],
  ['say "soon"', '"say ""soon"""', 'say "soon"'],
  ["12.5", "12.5", 12.5],
  ["-3", "-3", -3],
  ["0000011", '"0000011"', "0000011"],
  ["1,250", '"1,250"', "1,250"],
  ["true", "TRUE", true],
  ["=TODAY()", "TODAY()", 46086],
  ["=DATE(2026,3,5)", "DATE(2026,3,5)", 46086],
  ["=TIME(9,30,0)", "TIME(9,30,0)", 0.395833333],
  ["=Loans[@[Date out]]", "Loans[@[Date out]]", 46081],
  ["=loans[@piece]", "loans[@piece]", "boots"],
  ["=Loans[@[Value '[£']]]", "Loans[@[Value '[£']]]", null],
  ["='My loans'!C5", "'My loans'!C5", 46080],
  ["=$C$6", "$C$6", 46081],
])("%s is written %s", (typed, formula, value) => {
  const reading = read(typed);
  expect(reading).toMatchObject({ kind: "known", formula });
  const held = reading.kind === "known" ? reading.value : undefined;
  if (typeof value === "number") expect(held).toBeCloseTo(value, 6);
  else expect(held).toBe(value);
});

test.each([
  ["=Loans[#All]", values],
  ["=Loans", values.slice(1)],
  ["=Loans[]", values.slice(1)],
  ["=Loans[#Data]", values.slice(1)],
  ["=Loans[#Headers]", values.slice(0, 1)],
  ["=Loans[Date out]", [[46080], [46081]]],
  [
    "='My loans'!B5:C6",
    [
      ["coat", 46080],
      ["boots", 46081],
    ],
  ],
  ["=B:B", [[null], [null], [null], ["Piece"], ["coat"], ["boots"]]],
  ["Loans[Date out]", [[46080], [46081]]],
  ["=TODAY()", [[46086]]],
])("a range may be %s", (typed, value) => {
  expect(read(typed, true)).toMatchObject({ kind: "known", value });
});

test("a cell of the own row is that of the first row where the formula stands beside none", () => {
  expect(read("=Loans[@Piece]", false, 40)).toMatchObject({ value: "coat" });
  expect(read("=Loans[@Piece]", false, null)).toMatchObject({ value: "coat" });
});

test.each([
  ["=AsOf"],
  ["=SUM(C5:C6)"],
  ["=Loans[Nothing]"],
  ["=Gone!A1"],
  ["=VSTACK(Loans[#Headers],Loans[])"],
  ["=1+1"],
])("%s is left to the workbook", (typed) => {
  expect(read(typed, true)).toMatchObject({ kind: "unknown", formula: typed.slice(1) });
});

test.each([[""], ["  "], ["="]])("%j is blank", (typed) => {
  expect(read(typed)).toEqual({ kind: "blank" });
});

test("what is no range is said with the name of the argument, what was typed, and what would be right", () => {
  expect(read("the loans", true)).toMatchObject({
    kind: "wrong",
    sentence: expect.stringMatching(/^rows: "the loans" cannot be used; give .*=Loans\[#All\]/),
  });
});

test("several cells are not one", () => {
  expect(read("=Loans[Date out]")).toMatchObject({ kind: "wrong", sentence: expect.stringContaining("one cell") });
});
