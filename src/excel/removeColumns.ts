import type { NewColumns } from "../sheet/buildPlan";
import { widenTable } from "./widenTable";

/** Queues taking columns away again: their table gets its old width first, then the headings go. */
export function removeColumns(context: Excel.RequestContext, columns: NewColumns): void {
  const { sheetId, tableName, row, column, headings } = columns;
  if (tableName !== null) widenTable(context, tableName, -headings.length);
  const worksheet = context.workbook.worksheets.getItem(sheetId);
  worksheet.getRangeByIndexes(row, column, 1, headings.length).formulas = [headings.map(() => "")];
}
