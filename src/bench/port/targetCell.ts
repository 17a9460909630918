import type { Worksheet } from "@univerjs/core";
import type { Cell } from "../../sheet/cell";
import type { CellEdit } from "../../sheet/cellEdit";
import { heldCell } from "./heldCell";
import type { OpenGrid } from "./openGrid";

/** A cell that a step would write, with what stands there now. */
export interface TargetCell {
  readonly edit: CellEdit;
  readonly sheet: Worksheet;
  readonly value: Cell;
  readonly formula: string | null;
  readonly numberFormat: string;
  readonly merged: boolean;
  readonly spilled: boolean;
}

export function targetCell(open: OpenGrid, sheet: Worksheet, edit: CellEdit): TargetCell {
  const { row, column } = edit.at;
  const sheetId = sheet.getSheetId();
  const raw = sheet.getCellRaw(row, column);
  const isFormula = typeof raw?.f === "string" || typeof raw?.si === "string";
  const { isMerged, isMergedMainCell } = sheet.getCellInfoInMergeData(row, column);
  const spilled = open.formulas.getArrayFormulaCellData()[open.unitId]?.[sheetId]?.[row]?.[column];
  const style = raw?.s ? open.model.getStyles().getStyleByCell(raw) : undefined;
  return {
    edit,
    sheet,
    value: heldCell(spilled && !isFormula ? spilled : raw),
    formula: isFormula ? open.formulas.getFormulaStringByCell(row, column, sheetId, open.unitId) || null : null,
    numberFormat: style?.n?.pattern ?? "General",
    merged: isMerged && !isMergedMainCell,
    spilled: Boolean(spilled) && !isFormula,
  };
}
