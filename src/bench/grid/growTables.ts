import { ICommandService, IUndoRedoService, type ICellData, type IRange, type Nullable } from "@univerjs/core";
import { SetRangeValuesCommand, type ISetRangeValuesCommandParams } from "@univerjs/sheets";
import type { OpenGrid } from "../port/openGrid";
import { calculateTableAnew } from "./calculateTableAnew";
import { resizeTable } from "./resizeTable";
import type { GridTable } from "./tableAt";

const TABLE_CHANGED = "formula.mutation.set-super-table";
const PASTE = /paste/i;

/**
 * What is typed or pasted right below a table becomes part of it, with the formulas of the row above, as in Excel:
 * otherwise a piece written under the last one would be missing from every total.
 */
export function growTables(open: OpenGrid): () => void {
  const commands = open.grid.univer.__getInjector().get(ICommandService);
  const heard = commands.onCommandExecuted(({ id, params }) => {
    if (id === TABLE_CHANGED) calculateTableAnew(open, (params as { tableName: string }).tableName);
    // Typing names the range it fills; the pane's writing does not, and grows nothing, as in Excel.
    const typed = id === SetRangeValuesCommand.id ? (params as ISetRangeValuesCommandParams).range : undefined;
    const isPaste = id.startsWith("sheet.command.") && PASTE.test(id);
    if (typed === undefined && !isPaste) return;
    setTimeout(() => {
      const area = typed ?? open.facade.getActiveRange()?.getRange();
      if (area !== undefined && "startRow" in area) growAt(open, area);
    }, 0);
  });
  return () => heard.dispose();
}

function growAt(open: OpenGrid, area: IRange): void {
  const sheetId = open.facade.getActiveSheet().getSheetId();
  const table = open.facade.getTableList().find(({ subUnitId, range }) => {
    const below = range.endRow + 1;
    const beside = area.endColumn >= range.startColumn && area.startColumn <= range.endColumn;
    return subUnitId === sheetId && beside && area.startRow <= below && area.endRow >= below;
  });
  const sheet = open.model.getSheetBySheetId(sheetId);
  if (table === undefined || !sheet) return;
  const { startColumn, endColumn, endRow } = table.range;
  // A row that held something else before, a total say, is no row of the table's.
  for (let column = startColumn; column <= endColumn; column++) {
    const isWritten = column >= area.startColumn && column <= area.endColumn;
    if (!isWritten && !isBlank(sheet.getCellRaw(endRow + 1, column))) return;
  }
  let last = endRow;
  while (last < area.endRow && holdsAnything(last + 1)) last++;
  if (last > endRow) grow(open, table, last);

  function holdsAnything(row: number): boolean {
    for (let column = startColumn; column <= endColumn; column++)
      if (!isBlank(sheet?.getCellRaw(row, column))) return true;
    return false;
  }
}

function isBlank(cell: Nullable<ICellData>): boolean {
  return !cell || ((cell.v === undefined || cell.v === null || cell.v === "") && !cell.f && !cell.si && !cell.p);
}

function grow(open: OpenGrid, table: GridTable, last: number): void {
  const { subUnitId: sheetId, range } = table;
  const injector = open.grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const sheet = open.model.getSheetBySheetId(sheetId);
  const value: Record<number, Record<number, ICellData>> = {};
  for (let column = range.startColumn; column <= range.endColumn; column++) {
    const above = sheet?.getCellRaw(range.endRow, column);
    const formula = open.formulas.getFormulaStringByCell(range.endRow, column, sheetId, open.unitId);
    for (let row = range.endRow + 1; row <= last; row++) {
      const held = sheet?.getCellRaw(row, column);
      const cell: ICellData = {};
      if (above?.s && !held?.s) cell.s = above.s;
      if (formula && isBlank(held))
        cell.f = open.grid.api.getFormula().moveFormulaRefOffset(formula, 0, row - range.endRow);
      if (Object.keys(cell).length > 0) (value[row] ??= {})[column] = cell;
    }
  }
  const oneUndo = injector.get(IUndoRedoService).__tempBatchingUndoRedo(open.unitId);
  try {
    commands.syncExecuteCommand(SetRangeValuesCommand.id, { unitId: open.unitId, subUnitId: sheetId, value });
    void resizeTable(open, table, { ...range, endRow: last });
  } finally {
    oneUndo.dispose();
  }
}
