import type { Table } from "./table";

/** A cell of a table as sentences name it: its heading and its row, counted from 1 in the range as passed. */
export function argumentAt(table: Table, row: number, column: number): string {
  return `${(table.headings[column] ?? "").trim()}, row ${row + 1}`;
}
