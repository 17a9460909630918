import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";

const UNTIDY = /^\s|\s$|\s\s|[^\S ]/;

/** The text or number a row holds under a field, as trimmed text with single spaces; null where blank, true or false, or an error. */
export function textIn(row: CheckedRow, field: string): string | null {
  const cell = cellIn(row, field);
  if (typeof cell === "string") return UNTIDY.test(cell) ? cell.replace(/\s+/g, " ").trim() : cell;
  return typeof cell === "number" ? String(cell) : null;
}
