import { ICommandService, IUndoRedoService, type ICellData, type Worksheet } from "@univerjs/core";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import { succeed } from "../../domain/succeed";
import type { CellEdit, WriteReceipt } from "../../sheet/cellEdit";
import { cellsNamedTwice } from "../../sheet/cellsNamedTwice";
import { listCells } from "../../sheet/listCells";
import { isProtected } from "./isProtected";
import type { OpenGrid } from "./openGrid";
import { refuseStep } from "./refuseStep";
import { targetCell } from "./targetCell";
import { writtenCell } from "./writtenCell";

/** Writes all the edits of a step or none of them; the user's one undo takes all of it back. */
export function writeStep(open: OpenGrid, label: string, edits: readonly CellEdit[]): Outcome<WriteReceipt> {
  const doing = "write to the sheet";
  const twice = cellsNamedTwice(edits);
  if (twice.length > 0) return fail("cells-named-twice", { cells: listCells(twice) });
  const sheets = new Map<string, Worksheet>();
  for (const { at } of edits) {
    const sheet = open.model.getSheetBySheetId(at.sheetId);
    if (!sheet) return fail("sheet-gone", { doing });
    sheets.set(at.sheetId, sheet);
  }
  for (const [sheetId, sheet] of sheets) {
    if (isProtected(open, sheetId)) return fail("sheet-protected", { sheet: sheet.getName() });
  }
  const before = targets(open, sheets, edits);
  const refusal = refuseStep(before);
  if (refusal !== null) return refusal;

  const injector = open.grid.univer.__getInjector();
  const commands = injector.get(ICommandService);
  const oneUndo = injector.get(IUndoRedoService).__tempBatchingUndoRedo(open.unitId);
  try {
    for (const sheetId of sheets.keys()) {
      const value: Record<number, Record<number, ICellData>> = {};
      for (const edit of edits) {
        if (edit.at.sheetId === sheetId) (value[edit.at.row] ??= {})[edit.at.column] = writtenCell(edit);
      }
      commands.syncExecuteCommand(SetRangeValuesCommand.id, { unitId: open.unitId, subUnitId: sheetId, value });
    }
  } finally {
    oneUndo.dispose();
  }
  const after = targets(open, sheets, edits);
  const prior = before.map((held, index): CellEdit => {
    const now = after[index] ?? held;
    return {
      at: held.edit.at,
      expected: now.value,
      ...(now.formula !== null && { expectedFormula: now.formula }),
      value: held.value,
      ...(held.formula !== null && { formula: held.formula }),
      ...(now.numberFormat !== held.numberFormat && { numberFormat: held.numberFormat }),
    };
  });
  return succeed({ label, prior });
}

function targets(open: OpenGrid, sheets: ReadonlyMap<string, Worksheet>, edits: readonly CellEdit[]) {
  return edits.flatMap((edit) => {
    const sheet = sheets.get(edit.at.sheetId);
    return sheet === undefined ? [] : [targetCell(open, sheet, edit)];
  });
}
