import { addTable } from "./addTable.mjs";
import { SHOWN } from "./answers.mjs";
import { title, widths } from "./cells.mjs";

/** A sheet of typed rows. Columns of money are shown to the penny. */
export function plainSheet(workbook, { name, note, headings, rows, columnWidths, money = [] }) {
  const sheet = workbook.addWorksheet(name, { views: [{ state: "frozen", ySplit: 4 }] });
  title(sheet, name, note);
  widths(sheet, columnWidths);
  addTable(sheet, name, 4, 1, headings, rows);
  for (const text of money)
    rows.forEach((_, r) => (sheet.getCell(5 + r, headings.indexOf(text) + 1).numFmt = SHOWN.pence));
  return sheet;
}
