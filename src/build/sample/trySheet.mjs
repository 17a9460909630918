import { title, widths } from "./cells.mjs";

/** Room for a newcomer's first formula. */
export function trySheet(workbook) {
  const sheet = workbook.addWorksheet("Try here");
  title(sheet, "An empty sheet to try things on", "nothing else in the workbook depends on it");
  widths(sheet, [26, 14, 14, 17, 13, 13, 15, 13, 12]);
  [
    "1. In A9 type =TACK.LENDERTOTALS( then pick the table on Loans (or type Loans[#All]), a comma, AsOf, a bracket, Enter.",
    "2. On Loans change a Date back: the totals here, on Totals and on Late follow.",
    "3. On Job change the as-of day.",
  ].forEach((text, i) => {
    sheet.getCell(4 + i, 1).value = text;
  });
}
