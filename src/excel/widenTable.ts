/** Queues a table's new width, columns more or less at its right. Needs ExcelApi 1.13. */
export function widenTable(context: Excel.RequestContext, tableName: string, columns: number): void {
  const table = context.workbook.tables.getItem(tableName);
  table.resize(table.getRange().getResizedRange(0, columns));
}
