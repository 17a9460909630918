import { BooleanNumber, ObjectMatrix, type ICellData, type Nullable, type Worksheet } from "@univerjs/core";
import type { SheetSnapshot } from "../../sheet/sheetSnapshot";
import { collectCells } from "./collectCells";
import { heldCell } from "./heldCell";
import { isProtected } from "./isProtected";
import type { OpenGrid } from "./openGrid";
import { sheetTables } from "./sheetTables";

/** One sheet's used range with values, formulas and tables; what formulas spilled is part of it. */
export function readSheetSnapshot(open: OpenGrid, sheet: Worksheet): SheetSnapshot {
  const sheetId = sheet.getSheetId();
  const cells = collectCells();
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const isFormula = typeof cell?.f === "string" || typeof cell?.si === "string";
    const formula = isFormula ? open.formulas.getFormulaStringByCell(row, column, sheetId, open.unitId) : null;
    cells.put(row, column, heldCell(cell), formula || null);
  });
  const spilled = open.formulas.getArrayFormulaCellData()[open.unitId]?.[sheetId] ?? {};
  new ObjectMatrix<Nullable<ICellData>>(spilled).forValue((row, column, cell) => {
    if (!cells.has(row, column)) cells.put(row, column, heldCell(cell), null);
  });
  return {
    sheetId,
    name: sheet.getName(),
    visible: sheet.isSheetHidden() !== BooleanNumber.TRUE,
    isProtected: isProtected(open, sheetId),
    ...cells.usedRange(),
    tables: sheetTables(open, sheetId),
  };
}
