import type { FieldValue } from "../domain/fieldValue";
import { argumentAt } from "./argumentAt";
import { readDone } from "./readDone";
import type { Table } from "./table";

/** Whether a cell of a table says that a thing is done; blank (also 0) and a column below 0 are null. As readDone reads it. */
export function doneAt(table: Table, row: number, column: number): FieldValue<boolean> {
  if (column < 0) return null;
  const raw = table.cells[row]![column];
  if (raw === null || raw === undefined || raw === 0 || raw === "") return null;
  // A day, which is what mostly stands there, or a tick kept as 1.
  if (typeof raw === "number") return true;
  return readDone(raw, argumentAt(table, row, column));
}
