import type { CheckedRow } from "./checkedRow";

/**
 * The real date a row holds under a field, as a whole serial day; null for anything else.
 *
 * Text is null even where it can be read: the rule about dates kept as text has that finding, and a rule that went on
 * counting with it would report one slip twice.
 */
export function dayIn({ table, row }: CheckedRow, field: string): number | null {
  const column = table.columnOf[field];
  const raw = column === undefined ? null : table.cells[row]?.[column];
  return typeof raw === "number" && raw >= 1 && raw < 2958466 ? Math.floor(raw) : null;
}
