import type { NewRows } from "../sheet/buildPlan";
import { literalText } from "./literalText";

/** Queues new rows at the foot of a table: its new length first, so that its own formats and formulas come, then the cells. Needs ExcelApi 1.13. */
export function addRows(
  context: Excel.RequestContext,
  { sheetId, tableName, row, column, rows, formats }: NewRows,
): void {
  const table = context.workbook.tables.getItem(tableName);
  table.resize(table.getRange().getResizedRange(rows.length, 0));
  const worksheet = context.workbook.worksheets.getItem(sheetId);
  formats.forEach((format, along) => {
    const cells = rows.map((cell) => cell[along] ?? null);
    // A column of blanks is left to the table.
    if (cells.every((cell) => cell === null)) return;
    const under = worksheet.getRangeByIndexes(row, column + along, rows.length, 1);
    if (format !== null) under.numberFormat = rows.map(() => [format]);
    under.formulas = cells.map((cell) => {
      if (cell === null) return [""];
      if (typeof cell === "object") return [cell.error];
      return [typeof cell === "string" ? literalText(cell) : cell];
    });
  });
}
