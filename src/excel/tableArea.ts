import type { TableArea } from "../sheet/sheetSnapshot";

/** A table's place from its loaded range, heading row included. */
export function tableArea(
  name: string,
  range: Pick<Excel.Range, "rowIndex" | "columnIndex" | "rowCount" | "columnCount">,
): TableArea {
  const { rowIndex: row, columnIndex: column, rowCount, columnCount } = range;
  return { name, row, column, rowCount, columnCount };
}
