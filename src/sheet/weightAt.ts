import type { FieldValue } from "../domain/fieldValue";
import { argumentAt } from "./argumentAt";
import { readWeight, type Weight } from "./readWeight";
import type { Table } from "./table";

/** The weight in a cell of a table; blank, 0 and a column below 0 are null. Problems as for readWeight. */
export function weightAt(table: Table, row: number, column: number): FieldValue<Weight> {
  if (column < 0) return null;
  const weight = readWeight(table.cells[row]![column], argumentAt(table, row, column));
  if (!weight.ok) return weight.problem;
  const isNothing = weight.value === null || (weight.value.grams ?? weight.value.bareAmount) === 0;
  return isNothing ? null : weight.value;
}
