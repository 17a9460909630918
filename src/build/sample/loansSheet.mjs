import { addTable } from "./addTable.mjs";
import { SHOWN } from "./answers.mjs";
import { DATE, put, title, widths } from "./cells.mjs";

/** The return date of each piece, as the file stores an add-in's call. */
export const DUE_FORMULA =
  "_xldudf_TACK_DUE(Loans[[#This Row],[Date out]],Loans[[#This Row],[Terms]],LastShootDay,ClosedDays[Closed])";

/** Widths of the columns of the pieces, also where a function lists them again. */
export const PIECE_WIDTHS = [
  ...[11, 30, 11, 24, 10, 8, 12, 8, 13, 10, 17, 32, 17, 17, 11, 19, 18, 9, 10, 32],
  ...[17, 17, 10, 11, 13, 18, 15, 15, 17, 11, 13, 11, 16],
];

/** The pieces, one row each, with a total that somebody typed below them once. */
export function loansSheet(workbook, scenario) {
  const sheet = workbook.addWorksheet("Loans", { views: [{ state: "frozen", xSplit: 2, ySplit: 4 }] });
  title(
    sheet,
    "Pull for 30 + 31 March, and the pick-up",
    "one row a piece; due dates work themselves out from the terms",
  );
  widths(sheet, PIECE_WIDTHS);
  const dueColumn = scenario.headings.indexOf("Return due");
  const rows = scenario.pieces.map((row) =>
    row.map((typed, i) => (i === dueColumn && typed === "=DUE" ? `=${DUE_FORMULA}` : typed)),
  );
  addTable(sheet, "Loans", 4, 1, scenario.headings, rows);
  rows.forEach((row, r) => {
    if (row[dueColumn] !== "") sheet.getCell(5 + r, dueColumn + 1).numFmt = DATE;
    for (const money of ["Ins. value", "Rental fee", "Deposit"])
      sheet.getCell(5 + r, scenario.headings.indexOf(money) + 1).numFmt = SHOWN.money;
  });
  const bottom = 5 + rows.length;
  sheet.getCell(bottom, 2).value = "TOTAL";
  sheet.getCell(bottom, 2).font = { bold: true };
  put(sheet.getCell(bottom, 9), scenario.typedTotal);
}
