import type { Cell } from "../sheet/cell";
import { readCell } from "../sheet/readCell";
import type { CheckedRow } from "./checkedRow";

/** What a row holds under a field; null where it is blank (spaces alone are blank) or the table lacks the column. */
export function cellIn({ table, row }: CheckedRow, field: string): Cell {
  const column = table.columnOf[field];
  if (column === undefined) return null;
  const cell = readCell(table.cells[row]?.[column]);
  return typeof cell === "string" && cell.trim() === "" ? null : cell;
}
