import type { FieldValue } from "../domain/fieldValue";
import { argumentAt } from "./argumentAt";
import { readDate } from "./readDate";
import type { Table } from "./table";

const LAST_DAY = 2958465;

/** The day in a cell of a table; blank (also 0) and a column below 0 are null. Bounds and problems as for readDate. */
export function dayAt(table: Table, row: number, column: number): FieldValue<number> {
  if (column < 0) return null;
  const raw = table.cells[row]![column];
  if (typeof raw === "number" && raw >= 1 && raw <= LAST_DAY) return Math.floor(raw);
  if (raw === null || raw === undefined || raw === 0 || raw === "") return null;
  const day = readDate(raw, argumentAt(table, row, column));
  return day.ok ? day.value : day.problem;
}
