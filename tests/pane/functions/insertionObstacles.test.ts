import { insertionObstacles } from "../../../src/pane/functions/insertionObstacles";
import type { WorkbookSnapshot } from "../../../src/sheet/sheetSnapshot";

const workbook: WorkbookSnapshot = {
  name: "Job",
  dateSystem: 1900,
  sheets: [
    {
      sheetId: "s0",
      name: "Loans",
      visible: true,
      isProtected: false,
      firstRow: 0,
      firstColumn: 0,
      values: [
        ["Piece", "Due", null, "note"],
        ["coat", 5, null, null],
        [null, null, null, 7],
      ],
      formulas: [
        [null, null, null, null],
        [null, "=A1", null, null],
        [null, null, null, null],
      ],
      tables: [{ name: "Loans", row: 0, column: 0, rowCount: 2, columnCount: 2 }],
    },
    {
      sheetId: "s1",
      name: "Locked",
      visible: true,
      isProtected: true,
      firstRow: 0,
      firstColumn: 0,
      values: [],
      formulas: [],
      tables: [],
    },
  ],
};
const at = (row: number, column: number, sheetId = "s0") => ({ sheetId, row, column });
const table = { rowCount: 3, columnCount: 2 };

test("nothing is in the way of one value in a blank cell", () => {
  expect(insertionObstacles(workbook, at(9, 9), "=TACK.DUE(A1,B1)", null)).toEqual({ warnings: [], refusals: [] });
});

test("a filled cell is named with what it holds, and a formula too", () => {
  expect(insertionObstacles(workbook, at(0, 3), "=TACK.DUE(A1,B1)", null).warnings).toEqual(['D1 holds "note".']);
  expect(insertionObstacles(workbook, at(1, 1), "=TACK.DUE(A1,B1)", null).warnings).toEqual([
    "B2 holds the formula =A1.",
  ]);
});

test("cells in the way of a result of several cells are named", () => {
  expect(insertionObstacles(workbook, at(0, 2), "=TACK.LATEROWS(Other[#All],1)", table).warnings).toEqual([
    "The result fills 3 rows and 2 columns; in the way, so that it shows #SPILL!: D1, D3.",
  ]);
});

test("inside a table a result of several cells and a formula that reads the table itself are refused", () => {
  const { refusals } = insertionObstacles(workbook, at(1, 0), "=TACK.LATEROWS(Loans[#All],1)", table);
  expect(refusals).toHaveLength(2);
  expect(refusals[0]).toContain("#SPILL!");
  expect(refusals[1]).toContain("which the formula reads itself");
});

test("inside a table a formula may read its own row", () => {
  expect(insertionObstacles(workbook, at(1, 0), "=TACK.DUE(Loans[@Due],1)", null).refusals).toEqual([]);
});

test("a formula that reads its own row says so where the row has none", () => {
  const formula = "=TACK.DUE(Loans[@Due],1)";
  expect(insertionObstacles(workbook, at(1, 5), formula, null).warnings).toEqual([]);
  expect(insertionObstacles(workbook, at(8, 5), formula, null).warnings).toEqual([
    "The formula reads Loans in its own row, and row 9 has none.",
  ]);
  expect(insertionObstacles(workbook, at(1, 5, "s1"), formula, null).warnings).toEqual([
    "The formula reads Loans in its own row, and Loans is on another sheet.",
  ]);
});

test("a protected sheet and one that is gone are refused", () => {
  expect(insertionObstacles(workbook, at(0, 0, "s1"), "=1", null).refusals[0]).toContain("protected");
  expect(insertionObstacles(workbook, at(0, 0, "s9"), "=1", null).refusals[0]).toContain("no longer");
});
