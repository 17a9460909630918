import type { CheckedRow } from "./checkedRow";

/** The formula behind a cell, or null where a value was typed. */
export function formulaIn({ table, row }: CheckedRow, field: string): string | null {
  const column = table.columnOf[field];
  return column === undefined ? null : (table.formulas[row]?.[column] ?? null);
}
