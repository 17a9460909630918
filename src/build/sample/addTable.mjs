import { columnLetter, heading, put } from "./cells.mjs";

/** Writes rows under a heading row and makes them a table of the workbook. */
export function addTable(sheet, name, top, left, headings, rows) {
  const bottom = top + rows.length;
  const right = left + headings.length - 1;
  sheet.addTable({
    name,
    ref: `${columnLetter(left)}${top}:${columnLetter(right)}${bottom}`,
    headerRow: true,
    style: { theme: "TableStyleLight1", showRowStripes: true },
    columns: headings.map((text) => ({ name: text, filterButton: true })),
    rows: rows.map((row) => headings.map((_, i) => (row[i] === "" || row[i] === undefined ? null : row[i]))),
  });
  headings.forEach((text, i) => {
    const cell = sheet.getCell(top, left + i);
    cell.value = text;
    heading(cell);
  });
  rows.forEach((row, r) => {
    headings.forEach((_, i) => {
      const cell = sheet.getCell(top + 1 + r, left + i);
      cell.value = null;
      put(cell, row[i] ?? "");
    });
  });
}
