import type { CellPosition } from "../sheet/cellPosition";
import type { CheckedRow } from "./checkedRow";

/** Where a row's cell under a field stands in the workbook; a field the table lacks gives the row's first cell. */
export function positionIn({ table, row }: CheckedRow, field: string): CellPosition {
  const column = table.columnOf[field] ?? 0;
  return { sheetId: table.sheetId, row: table.firstRow + row, column: table.firstColumn + column };
}
