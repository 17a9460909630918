import type { TableArea } from "../../sheet/sheetSnapshot";
import type { OpenGrid } from "./openGrid";

/** The grid's tables on one sheet, heading rows included. */
export function sheetTables({ facade }: OpenGrid, sheetId: string): TableArea[] {
  return facade
    .getTableList()
    .filter(({ subUnitId }) => subUnitId === sheetId)
    .map(({ name, range: { startRow, startColumn, endRow, endColumn } }) => ({
      name,
      row: startRow,
      column: startColumn,
      rowCount: endRow - startRow + 1,
      columnCount: endColumn - startColumn + 1,
    }));
}
