import { ObjectMatrix, type ICellData, type Nullable, type Worksheet } from "@univerjs/core";
import { cellName } from "../../sheet/cellName";
import type { Cell } from "../../sheet/cell";
import { heldCell } from "../port/heldCell";
import type { OpenGrid } from "../port/openGrid";
import type { Look } from "./lookOfStyle";
import { lookReader } from "./lookReader";

/** One cell of the grid as saving sees it. */
export interface CellState {
  readonly value: Cell;
  /** With =, or null. */
  readonly formula: string | null;
  /** The area its formula spills over, itself counted. */
  readonly spill: string | null;
  /** True for a cell that shows part of another cell's result. */
  readonly spilled: boolean;
  readonly look: Look;
}

/** The cells of a sheet by row and column; plain blank ones are left out. */
export type SheetState = ReadonlyMap<number, ReadonlyMap<number, CellState>>;

/** The sheet as it stands in the grid. */
export function sheetState(open: OpenGrid, sheet: Worksheet): SheetState {
  const sheetId = sheet.getSheetId();
  const styles = open.model.getStyles();
  const lookOf = lookReader((id) => styles.get(id));
  const ranges = open.formulas.getArrayFormulaRange()[open.unitId]?.[sheetId];
  const state = new Map<number, Map<number, CellState>>();
  const put = (row: number, column: number, cell: CellState) => {
    const line = state.get(row) ?? new Map<number, CellState>();
    state.set(row, line.set(column, cell));
  };
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const isFormula = typeof cell?.f === "string" || typeof cell?.si === "string";
    const formula = isFormula ? open.formulas.getFormulaStringByCell(row, column, sheetId, open.unitId) || null : null;
    const range = ranges?.[row]?.[column];
    const spill = range
      ? `${cellName(range.startRow, range.startColumn)}:${cellName(range.endRow, range.endColumn)}`
      : null;
    const look = lookOf(cell?.s);
    put(row, column, { value: heldCell(cell), formula, spill, spilled: false, look });
  });
  const spilled = open.formulas.getArrayFormulaCellData()[open.unitId]?.[sheetId] ?? {};
  new ObjectMatrix<Nullable<ICellData>>(spilled).forValue((row, column, cell) => {
    const held = state.get(row)?.get(column);
    if (held?.formula) return;
    const own = held?.look ?? lookOf(null);
    const pattern =
      own.pattern === "General" && typeof cell?.s === "object" ? (cell.s?.n?.pattern ?? "General") : own.pattern;
    put(row, column, { value: heldCell(cell), formula: null, spill: null, spilled: true, look: { ...own, pattern } });
  });
  return state;
}
