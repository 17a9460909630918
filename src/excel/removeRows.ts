import type { NewRows } from "../sheet/buildPlan";

/** Queues taking rows away from the foot of a table again: it gets its old length first, then the cells go. Needs ExcelApi 1.13. */
export function removeRows(
  context: Excel.RequestContext,
  { sheetId, tableName, row, column, rows, formats }: NewRows,
): void {
  const table = context.workbook.tables.getItem(tableName);
  table.resize(table.getRange().getResizedRange(-rows.length, 0));
  const under = context.workbook.worksheets
    .getItem(sheetId)
    .getRangeByIndexes(row, column, rows.length, formats.length);
  under.formulas = rows.map((cells) => cells.map(() => ""));
}
