import { isProblem } from "../domain/isProblem";
import { textAt } from "../sheet/textAt";
import type { Table } from "../sheet/table";

/** What a row says under a field, as text; "" where it says nothing, "?" where the cell holds an error. */
export function cellText(table: Table, row: number, field: string): string {
  const text = textAt(table, row, table.columnOf[field] ?? -1);
  return isProblem(text) ? "?" : (text ?? "");
}
