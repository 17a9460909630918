import { ObjectMatrix, type ICellData, type IStyleData, type IWorksheetData, type Nullable } from "@univerjs/core";
import { heldCell } from "../port/heldCell";
import { lookReader } from "./lookReader";
import type { CellState, SheetState } from "./sheetState";

/** The sheet as it came out of the file. */
export function openedState(data: Partial<IWorksheetData>, styles: Readonly<Record<string, unknown>>): SheetState {
  const state = new Map<number, Map<number, CellState>>();
  const lookOf = lookReader((id) => styles[id] as Nullable<IStyleData>);
  new ObjectMatrix<Nullable<ICellData>>(data.cellData ?? {}).forValue((row, column, cell) => {
    const line = state.get(row) ?? new Map<number, CellState>();
    const look = lookOf(cell?.s);
    line.set(column, { value: heldCell(cell), formula: cell?.f ?? null, spill: null, spilled: false, look });
    state.set(row, line);
  });
  return state;
}
