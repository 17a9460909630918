import type { Cell } from "./cell";
import type { CellPosition } from "./cellPosition";
import type { SheetSnapshot } from "./sheetSnapshot";

/** Notes at the head of a sheet stand within these many rows and columns; tables below them are not searched. */
const NOTE_ROWS = 30;
const NOTE_COLUMNS = 12;

/** A word in one cell with its value in the cell to the right, as in "Call", 08:00. */
export interface SheetNote {
  readonly label: string;
  readonly value: Cell;
  /** The cell of the value. */
  readonly at: CellPosition;
}

/** What may be notes at the head of a sheet, column by column and each column from the top. */
export function sheetNotes(sheet: SheetSnapshot): readonly SheetNote[] {
  const notes: SheetNote[] = [];
  for (let column = 0; column < NOTE_COLUMNS; column++) {
    for (const [row, cells] of sheet.values.slice(0, NOTE_ROWS).entries()) {
      const label = cells[column];
      const value = cells[column + 1] ?? null;
      if (typeof label !== "string" || value === null) continue;
      const at = { sheetId: sheet.sheetId, row: sheet.firstRow + row, column: sheet.firstColumn + column + 1 };
      notes.push({ label, value, at });
    }
  }
  return notes;
}
