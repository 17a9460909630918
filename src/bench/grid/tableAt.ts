import type { FWorkbook } from "@univerjs/sheets/facade";
import type {} from "@univerjs/preset-sheets-table";

/** A table of the grid with its place, heading row included. */
export type GridTable = ReturnType<FWorkbook["getTableList"]>[number];

/** The table that a cell stands in, or null. */
export function tableAt(workbook: FWorkbook, sheetId: string, row: number, column: number): GridTable | null {
  const found = workbook.getTableList().find(({ subUnitId, range }) => {
    const inside =
      row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn;
    return subUnitId === sheetId && inside;
  });
  return found ?? null;
}
