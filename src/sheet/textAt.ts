import type { FieldValue } from "../domain/fieldValue";
import { argumentAt } from "./argumentAt";
import { readText } from "./readText";
import type { Table } from "./table";

/** The text of a cell of a table, trimmed; blank (also 0, as some hosts send blanks) and a column below 0 are null. Problem: error-in-cell. */
export function textAt(table: Table, row: number, column: number): FieldValue<string> {
  if (column < 0) return null;
  const raw = table.cells[row]![column];
  if (typeof raw === "string") return isTrimmed(raw) ? raw : raw.trim() || null;
  if (raw === null || raw === undefined || raw === 0) return null;
  const text = readText(raw, argumentAt(table, row, column));
  if (!text.ok) return text.problem;
  return text.value === "0" ? null : text.value;
}

/** Whether a text surely neither begins nor ends with a space: quicker to see than to trim, cell by cell. */
function isTrimmed(text: string): boolean {
  const first = text.charCodeAt(0);
  const last = text.charCodeAt(text.length - 1);
  return first > 0x20 && first < 0x7f && last > 0x20 && last < 0x7f;
}
