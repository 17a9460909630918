import { heading, put, title, widths } from "./cells.mjs";

const INK = "FF23303B";
const PAPER = "FFF3EFE6";

/** How the figures of an answer are shown. */
export const SHOWN = {
  day: "ddd d mmm yyyy",
  money: '"£"#,##0',
  pence: '"£"#,##0.00',
  // As the functions give them of their own accord.
  date: "yyyy-mm-dd",
  amount: "#,##0.00",
  time: "hh:mm",
  share: "0%",
  one: "0.0",
  two: "0.00",
};

/** A sheet of questions and formulas; its tab is coloured, those of typed sheets are not. */
export function answerSheet(workbook, { name, about, note, columnWidths }) {
  const sheet = workbook.addWorksheet(name, {
    views: [{ state: "frozen", ySplit: 4 }],
    properties: { tabColor: { argb: "FF17776C" } },
  });
  title(sheet, about, note);
  widths(sheet, columnWidths);
  return sheet;
}

/** A question in the stylist's words; the answer stands below or beside it. */
export function question(sheet, address, text) {
  sheet.getCell(address).value = text;
  sheet.getCell(address).font = { bold: true, color: { argb: INK } };
}

/** A cell to be typed over: shaded as on the sheet Job. */
export function input(cell, typed, format) {
  put(cell, typed);
  if (format !== undefined) cell.numFmt = format;
  cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: PAPER } };
}

/** A formula that takes or gives whole ranges; where it stands is remembered for the dynamic-array marks in the file. */
export function spill(sheet, spills, address, formula, headings = 0, formats = {}) {
  const top = sheet.getCell(address);
  top.value = { formula };
  spills.push({ sheet: sheet.name, address });
  for (let column = 0; column < headings; column++) heading(sheet.getCell(top.row, top.col + column));
  // A figure that has gone through another function no longer says how it is shown.
  for (const [column, { format, rows }] of Object.entries(formats))
    for (let row = 1; row <= rows; row++) sheet.getCell(top.row + row, top.col + Number(column)).numFmt = format;
}

/**
 * Labels in one column and what they say in a column to the right, row by row: a typed value that may be changed, or a formula
 * with its format. A blank entry leaves a row blank.
 */
export function facts(sheet, spills, top, left, entries, across = 1) {
  entries.forEach((entry, i) => {
    if (entry === null) return;
    const [label, typed, format] = entry;
    const cell = sheet.getCell(top + i, left + across);
    sheet.getCell(top + i, left).value = label;
    if (typed === undefined) {
      sheet.getCell(top + i, left).font = { bold: true, color: { argb: INK } };
      return;
    }
    if (typeof typed === "object") {
      spill(sheet, spills, cell.address, typed.formula);
      sheet.getCell(top + i, left).font = { bold: true, color: { argb: INK } };
      if (format !== undefined) cell.numFmt = format;
    } else input(cell, typed, format);
    cell.alignment = { horizontal: "right" };
  });
}
