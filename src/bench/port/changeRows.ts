import type { ICellData, ICommandService } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import type { NewRows } from "../../sheet/buildPlan";
import { resizeTable } from "../grid/resizeTable";
import type { OpenGrid } from "./openGrid";
import { writtenCell } from "./writtenCell";

/** Adds rows at the foot of a table, or takes them away, and gives the table its new length. */
export async function changeRows(
  open: OpenGrid,
  commands: ICommandService,
  { sheetId, tableName, row, column, rows, formats }: NewRows,
  isAdded: boolean,
): Promise<void> {
  const { unitId } = open;
  const sheet = open.model.getSheetBySheetId(sheetId);
  const needed = row + rows.length;
  if (isAdded && sheet && sheet.getRowCount() < needed) {
    open.facade.getSheetBySheetId(sheetId)?.setRowCount(needed + 20);
  }
  const value: Record<number, Record<number, ICellData>> = {};
  rows.forEach((cells, down) => {
    cells.forEach((cell, along) => {
      const at = { sheetId, row: row + down, column: column + along };
      const format = isAdded ? (formats[along] ?? null) : null;
      const written = { at, expected: null, value: isAdded ? cell : null };
      (value[at.row] ??= {})[at.column] = writtenCell({ ...written, ...(format !== null && { numberFormat: format }) });
    });
  });
  commands.syncExecuteCommand(SetRangeValuesCommand.id, { unitId, subUnitId: sheetId, value });
  const table = open.facade.getTableList().find(({ name }) => name === tableName);
  if (table === undefined) return;
  const endRow = table.range.endRow + (isAdded ? rows.length : -rows.length);
  await resizeTable(open, table, { ...table.range, endRow });
}
