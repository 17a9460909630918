import type { DocumentTable, DocumentCell } from "../paper/DocumentTable";
import { wellFormed } from "./wellFormed";

/** So that a spreadsheet takes the file for UTF-8 and not for the letters of its own country. */
const BYTE_ORDER_MARK = "\uFEFF";
/** Signs that begin a formula, also in their full-width forms. */
const FORMULA = /^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;
/** The same behind a sign at which a spreadsheet of another country begins a new cell, whatever quotes stand around it. */
const FORMULA_WITHIN = /([;\t\r\n][\s"]*)(?=[=+\-@\uFF1D\uFF0B\uFF0D\uFF20])/g;

/**
 * A table as comma-separated values (RFC 4180), to be opened in a spreadsheet.
 *
 * Numbers are numbers with a decimal point; texts that a spreadsheet would take for a formula get an apostrophe in front, as somebody
 * typing them would put it there. Lines end with CR LF. The first line has the headings.
 */
export function csvText({ headings, rows }: DocumentTable): string {
  const line = (cells: readonly DocumentCell[]): string => `${cells.map(field).join(",")}\r\n`;
  return BYTE_ORDER_MARK + [headings, ...rows].map(line).join("");
}

function field(cell: DocumentCell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return Number.isFinite(cell) ? String(cell) : "";
  const text = wellFormed(cell);
  const harmless = `${FORMULA.test(text) ? "'" : ""}${text.replace(FORMULA_WITHIN, "$1'")}`;
  return /[",;\t\r\n]|^\s|\s$/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
