const INK = "FF23303B";
export const DATE = "ddd d mmm yyyy";

/** Serial day of an ISO date: whole days since 1899-12-30, as every spreadsheet counts after February 1900. */
function serial(iso) {
  return Date.UTC(...iso.split("-").map((part, i) => Number(part) - (i === 1 ? 1 : 0))) / 86400000 + 25569;
}

/** Fraction of a day of a time typed as hh:mm. */
function fraction(time) {
  const [hours, minutes] = time.split(":").map(Number);
  return (hours * 60 + minutes) / 1440;
}

/**
 * One typed cell as the workbook holds it: 'text stays text, =formula is one, an ISO date is a date,
 * digits are a number, anything else is the text.
 */
export function put(cell, typed) {
  if (typed === "" || typed === null) return;
  if (typeof typed === "number" || typeof typed === "boolean") cell.value = typed;
  else if (typed.startsWith("'")) cell.value = typed.slice(1);
  else if (typed.startsWith("=")) cell.value = { formula: typed.slice(1) };
  else if (/^\d{4}-\d\d-\d\d$/.test(typed)) {
    cell.value = serial(typed);
    cell.numFmt = DATE;
  } else if (/^\d\d:\d\d$/.test(typed)) {
    cell.value = fraction(typed);
    cell.numFmt = "hh:mm";
  } else cell.value = /^\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
}

export function heading(cell) {
  cell.font = { bold: true, color: { argb: "FFFFFFFF" } };
  cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: INK } };
}

export function columnLetter(column) {
  return column > 26
    ? columnLetter(Math.floor((column - 1) / 26)) + columnLetter(((column - 1) % 26) + 1)
    : String.fromCharCode(64 + column);
}

export function title(sheet, text, note) {
  sheet.getCell(1, 1).value = text;
  sheet.getCell(1, 1).font = { bold: true, size: 14, color: { argb: INK } };
  sheet.getCell(2, 1).value = note;
  sheet.getCell(2, 1).font = { italic: true, color: { argb: "FF5B6770" } };
}

export function widths(sheet, list) {
  list.forEach((width, i) => {
    sheet.getColumn(i + 1).width = width;
  });
}
