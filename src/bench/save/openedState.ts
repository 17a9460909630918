import { ObjectMatrix, type ICellData, type IWorksheetData, type Nullable } from "@univerjs/core";
import { heldCell } from "../port/heldCell";
import { lookOfStyle } from "./lookOfStyle";
import type { CellState, SheetState } from "./sheetState";

/** The sheet as it came out of the file. */
export function openedState(data: Partial<IWorksheetData>, styles: Readonly<Record<string, unknown>>): SheetState {
  const state = new Map<number, Map<number, CellState>>();
  new ObjectMatrix<Nullable<ICellData>>(data.cellData ?? {}).forValue((row, column, cell) => {
    const style = typeof cell?.s === "string" ? styles[cell.s] : cell?.s;
    const line = state.get(row) ?? new Map<number, CellState>();
    const look = lookOfStyle(style as Parameters<typeof lookOfStyle>[0]);
    line.set(column, { value: heldCell(cell), formula: cell?.f ?? null, spill: null, spilled: false, look });
    state.set(row, line);
  });
  return state;
}
