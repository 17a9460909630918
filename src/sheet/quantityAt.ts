import type { FieldValue } from "../domain/fieldValue";
import { argumentAt } from "./argumentAt";
import { readQuantity } from "./readQuantity";
import type { Table } from "./table";

/** The whole number of pieces in a cell of a table; blank, 0 and a column below 0 are null. Problems as for readQuantity. */
export function quantityAt(table: Table, row: number, column: number): FieldValue<number> {
  if (column < 0) return null;
  const raw = table.cells[row]![column];
  if (raw === null || raw === undefined || raw === 0 || raw === "") return null;
  if (typeof raw === "number" && raw > 0 && Number.isSafeInteger(raw)) return raw;
  const quantity = readQuantity(raw, argumentAt(table, row, column));
  return quantity.ok ? quantity.value || null : quantity.problem;
}
