import type { CellPosition } from "./cellPosition";
import type { SheetTable } from "./sheetTable";

/** The table a cell stands in. */
export function tableAt(at: CellPosition, tables: readonly SheetTable[]): SheetTable | undefined {
  return tables.find((table) => {
    const row = at.row - table.firstRow;
    const column = at.column - table.firstColumn;
    return (
      at.sheetId === table.sheetId &&
      row >= 0 &&
      row < table.cells.length &&
      column >= 0 &&
      column < table.headings.length
    );
  });
}
