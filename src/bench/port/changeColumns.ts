import type { ICellData, ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import type { NewColumns } from "../../sheet/buildPlan";
import { resizeTable } from "../grid/resizeTable";
import type { OpenGrid } from "./openGrid";
import { writtenCell } from "./writtenCell";

/** Adds columns with their headings, or takes them away, and gives their table its new width. */
export async function changeColumns(
  open: OpenGrid,
  commands: ICommandService,
  columns: NewColumns,
  isAdded: boolean,
): Promise<void> {
  const { sheetId, tableName, row, column, rowCount, headings, formats } = columns;
  const { unitId } = open;
  const sheet = open.model.getSheetBySheetId(sheetId);
  const needed = column + headings.length;
  if (isAdded && sheet && sheet.getColumnCount() < needed) {
    open.facade.getSheetBySheetId(sheetId)?.setColumnCount(needed + 4);
  }
  const value: Record<number, Record<number, ICellData>> = { [row]: {} };
  headings.forEach((heading, along) => {
    const at = { sheetId, row, column: column + along };
    value[row]![at.column] = writtenCell({ at, expected: null, value: isAdded ? heading : null });
    const numberFormat = formats[along] ?? null;
    if (!isAdded || numberFormat === null) return;
    for (let down = 1; down < rowCount; down++) {
      (value[row + down] ??= {})[at.column] = writtenCell({ at, expected: null, value: null, numberFormat });
    }
  });
  commands.syncExecuteCommand(SetRangeValuesCommand.id, { unitId, subUnitId: sheetId, value });
  const table = open.facade.getTableList().find(({ name }) => name === tableName);
  if (table === undefined) return;
  const endColumn = table.range.endColumn + (isAdded ? headings.length : -headings.length);
  await resizeTable(open, table, { ...table.range, endColumn });
}
