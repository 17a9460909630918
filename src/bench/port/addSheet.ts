import { DataValidationRenderMode, ICommandService, type ICellData } from "@univerjs/core";
import type {} from "@univerjs/preset-sheets-table";
import type { NewSheet } from "../../sheet/buildPlan";
import type { OpenGrid } from "./openGrid";
import { writtenCell } from "./writtenCell";

/** A list is offered for so many rows, since a table grows while it is typed in. */
const LIST_ROWS = 500;
const ADD_LIST = "sheet.command.addDataValidation";

/** Adds a sheet with its table at the end of the workbook; answers its id. */
export async function addSheet({ facade, grid, unitId }: OpenGrid, sheet: NewSheet): Promise<string> {
  const { name, tableName, headings, rows, formats, lists } = sheet;
  const index = facade.getSheets().length;
  const columnCount = Math.max(26, headings.length + 4);
  const before = facade.getActiveSheet();
  // The grid takes no table that is called like a sheet; a sheet that is called like a table it does take.
  const added = facade.insertSheet(`${name} ${index}`, { index, sheet: { rowCount: 1000, columnCount } });
  // The grid goes to a new sheet by itself; the user is somewhere else.
  facade.setActiveSheet(before);
  const at = { sheetId: added.getSheetId(), row: 0, column: 0 };
  const cells = [headings, ...rows].map((row, r) =>
    row.map((value, column): ICellData => {
      const format = r === 0 ? null : (formats[column] ?? null);
      return writtenCell({ at, expected: null, value, ...(format !== null && { numberFormat: format }) });
    }),
  );
  const area = added.getRange(0, 0, cells.length, headings.length);
  area.setValues(cells);
  added.setFrozenRows(1);
  await added.addTable(tableName, area.getRange(), tableName, {});
  added.setName(name);
  const commands = grid.univer.__getInjector().get(ICommandService);
  for (const [column, source] of lists.entries()) {
    if (source === null) continue;
    const rule = {
      uid: `list-${at.sheetId}-${column}`,
      type: "list",
      // As the file has it. The grid's own builder would write the workbook's id into a reference.
      formula1: source,
      ranges: [{ startRow: 1, endRow: LIST_ROWS, startColumn: column, endColumn: column }],
      allowBlank: true,
      // The list helps; what is not in it may be right all the same.
      showErrorMessage: false,
      renderMode: DataValidationRenderMode.ARROW,
    };
    commands.syncExecuteCommand(ADD_LIST, { unitId, subUnitId: at.sheetId, rule });
  }
  return at.sheetId;
}
