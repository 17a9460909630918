import type { Cell } from "../sheet/cell";
import type { CellEdit } from "../sheet/cellEdit";
import { readCell } from "../sheet/readCell";
import type { CheckedRow } from "./checkedRow";
import { positionIn } from "./positionIn";

/** The edit that puts a value into a row's cell, on condition that the cell still holds what was checked. */
export function replaceCell(row: CheckedRow, field: string, value: Cell, numberFormat?: string): CellEdit {
  const column = row.table.columnOf[field] ?? 0;
  const expected = readCell(row.table.cells[row.row]?.[column]);
  return { at: positionIn(row, field), expected, value, ...(numberFormat === undefined ? {} : { numberFormat }) };
}
