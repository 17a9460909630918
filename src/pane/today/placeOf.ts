import type { CellPosition } from "../../sheet/cellPosition";
import type { SheetTable } from "../../sheet/sheetTable";

/** Where a row's cell stands in the workbook: the first of the fields that the table has, else the row's first cell. */
export function placeOf(table: SheetTable, row: number, fields: readonly string[]): CellPosition {
  const column = fields.map((field) => table.columnOf[field]).find((found) => found !== undefined) ?? 0;
  return { sheetId: table.sheetId, row: table.firstRow + row, column: table.firstColumn + column };
}
