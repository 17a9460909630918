import { BooleanNumber, ObjectMatrix, type ICellData, type Nullable, type Worksheet } from "@univerjs/core";
import type { Cell } from "../../sheet/cell";
import type { SheetSnapshot } from "../../sheet/sheetSnapshot";
import { heldCell } from "./heldCell";
import { isProtected } from "./isProtected";
import type { OpenGrid } from "./openGrid";
import { sheetTables } from "./sheetTables";

/** One sheet's used range with values, formulas and tables; what formulas spilled is part of it. */
export function readSheetSnapshot(open: OpenGrid, sheet: Worksheet): SheetSnapshot {
  const sheetId = sheet.getSheetId();
  const rows = new Map<number, Map<number, { value: Cell; formula: string | null }>>();
  let firstColumn = Infinity;
  let lastColumn = -1;
  const put = (row: number, column: number, value: Cell, formula: string | null) => {
    if (value === null && formula === null) return;
    const line = rows.get(row) ?? new Map<number, { value: Cell; formula: string | null }>();
    line.set(column, { value, formula });
    rows.set(row, line);
    firstColumn = Math.min(firstColumn, column);
    lastColumn = Math.max(lastColumn, column);
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const isFormula = typeof cell?.f === "string" || typeof cell?.si === "string";
    const formula = isFormula ? open.formulas.getFormulaStringByCell(row, column, sheetId, open.unitId) : null;
    put(row, column, heldCell(cell), formula || null);
  });
  const spilled = open.formulas.getArrayFormulaCellData()[open.unitId]?.[sheetId] ?? {};
  new ObjectMatrix<Nullable<ICellData>>(spilled).forValue((row, column, cell) => {
    if (rows.get(row)?.has(column) !== true) put(row, column, heldCell(cell), null);
  });
  const filled = [...rows.keys()];
  const firstRow = filled.reduce((least, row) => Math.min(least, row), Infinity);
  const lastRow = filled.reduce((most, row) => Math.max(most, row), -1);
  const rowCount = filled.length === 0 ? 0 : lastRow - firstRow + 1;
  const columnCount = filled.length === 0 ? 0 : lastColumn - firstColumn + 1;
  const values: Cell[][] = [];
  const formulas: (string | null)[][] = [];
  for (let row = firstRow; row < firstRow + rowCount; row++) {
    const line = rows.get(row);
    const cells = Array.from({ length: columnCount }, (_, column) => line?.get(firstColumn + column));
    values.push(cells.map((cell) => cell?.value ?? null));
    formulas.push(cells.map((cell) => cell?.formula ?? null));
  }
  return {
    sheetId,
    name: sheet.getName(),
    visible: sheet.isSheetHidden() !== BooleanNumber.TRUE,
    isProtected: isProtected(open, sheetId),
    firstRow: rowCount === 0 ? 0 : firstRow,
    firstColumn: rowCount === 0 ? 0 : firstColumn,
    values,
    formulas,
    tables: sheetTables(open, sheetId),
  };
}
