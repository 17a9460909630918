import { shiftedIndex } from "./shiftedIndex";
import type { CellState, SheetState } from "./sheetState";
import type { StructureEdit } from "./structureEdit";

/** The cells after rows or columns were put in or taken out; their formulas stay as they were written. */
export function shiftedState(state: SheetState, edit: StructureEdit): SheetState {
  const shifted = new Map<number, Map<number, CellState>>();
  for (const [row, line] of state) {
    const newRow = edit.axis === "row" ? shiftedIndex(row, edit) : row;
    if (newRow === null) continue;
    const newLine = new Map<number, CellState>();
    for (const [column, cell] of line) {
      const newColumn = edit.axis === "column" ? shiftedIndex(column, edit) : column;
      if (newColumn !== null) newLine.set(newColumn, cell);
    }
    shifted.set(newRow, newLine);
  }
  return shifted;
}
