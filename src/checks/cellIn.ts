import type { Cell } from "../sheet/cell";
import { readCell } from "../sheet/readCell";
import type { CheckedRow } from "./checkedRow";

/** What a row holds under a field; null where it is blank (spaces alone are blank) or the table lacks the column. */
export function cellIn({ table, row }: CheckedRow, field: string): Cell {
  const column = table.columnOf[field];
  if (column === undefined) return null;
  const raw = table.cells[row]?.[column];
  // Most cells are numbers or blank, and every rule asks for some.
  if (typeof raw === "number" || raw === null) return raw;
  const cell = readCell(raw);
  return typeof cell === "string" && cell.trim() === "" ? null : cell;
}
