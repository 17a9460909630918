import type { SheetTable } from "../../src/sheet/sheetTable";
import { cellsOfRow } from "../../src/checks/cellsOfRow";

/** Headings in C4:F4; the row asked about is row 6 of the sheet. */
const table = { firstRow: 3, firstColumn: 2, headings: ["Piece", "Date out", "Terms", "Due"] } as unknown as SheetTable;

test.each([
  ["=D6+7", [1]],
  ["=TACK.DUE($D6,E$6)", [1, 2]],
  ["=D5+D7", []],
  ["=Other!D6", []],
  ["='Other sheet'!$D$6", []],
  ["=[@[Date out]]+7", [1]],
  ["=[@Terms]", [2]],
  ["=_xldudf_TACK_DUE(Loans[[#This Row],[Date out]],Loans[[#This Row],[Terms]])", [1, 2]],
  ['="D6"&E6', [2]],
  ["=LOG10(E6)", [2]],
  ["=A6+Z6", []],
  ["=SUM(D6:E6)", [1, 2]],
  ["=SUM(D$1:D$9)", [1]],
  ["=SUM(A1:B9)", []],
  ["=SUM(D1:D5)", []],
  ["=SUM(A6:ZZ6)", [0, 1, 2, 3]],
])("%s reads columns %p of its own row", (formula, expected) => {
  expect(cellsOfRow(formula, { table, row: 2 })).toEqual(expected);
});
