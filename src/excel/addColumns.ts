import type { NewColumns } from "../sheet/buildPlan";
import { literalText } from "./literalText";
import { widenTable } from "./widenTable";

/** Queues new columns: their headings, the formats under them, and the width of their table. */
export function addColumns(context: Excel.RequestContext, columns: NewColumns): void {
  const { sheetId, tableName, row, column, rowCount, headings, formats } = columns;
  const worksheet = context.workbook.worksheets.getItem(sheetId);
  worksheet.getRangeByIndexes(row, column, 1, headings.length).formulas = [headings.map(literalText)];
  formats.forEach((format, along) => {
    if (format === null || rowCount < 2) return;
    const under = worksheet.getRangeByIndexes(row + 1, column + along, rowCount - 1, 1);
    under.numberFormat = Array.from({ length: rowCount - 1 }, () => [format]);
  });
  if (tableName !== null) widenTable(context, tableName, headings.length);
}
