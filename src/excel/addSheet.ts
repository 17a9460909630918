import type { Cell } from "../sheet/cell";
import type { NewSheet } from "../sheet/buildPlan";
import { literalText } from "./literalText";

/** A list is offered for so many rows, since a table grows while it is typed in. */
const LIST_ROWS = 500;

/** Queues a new sheet at the end of the workbook, with its table. */
export function addSheet(context: Excel.RequestContext, sheet: NewSheet): Excel.Worksheet {
  const { name, tableName, headings, rows, formats, lists } = sheet;
  const worksheet = context.workbook.worksheets.add(name);
  const area = worksheet.getRangeByIndexes(0, 0, rows.length + 1, headings.length);
  formats.forEach((format, column) => {
    if (format === null) return;
    worksheet.getRangeByIndexes(1, column, rows.length, 1).numberFormat = rows.map(() => [format]);
  });
  area.formulas = [headings, ...rows].map((row) => row.map(asTyped));
  const table = worksheet.tables.add(area, true);
  table.name = tableName;
  lists.forEach((source, column) => {
    if (source === null) return;
    const { dataValidation } = worksheet.getRangeByIndexes(1, column, LIST_ROWS, 1);
    dataValidation.rule = { list: { inCellDropDown: true, source } };
    // The list helps; what is not in it may be right all the same.
    dataValidation.errorAlert = { showAlert: false, message: "", title: "", style: "Information" };
  });
  area.format.autofitColumns();
  worksheet.freezePanes.freezeRows(1);
  return worksheet;
}

function asTyped(cell: Cell): string | number | boolean {
  if (cell === null) return "";
  if (typeof cell === "object") return cell.error;
  return typeof cell === "string" ? literalText(cell) : cell;
}
