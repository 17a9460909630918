import type { Cell } from "../../sheet/cell";
import type { SheetSnapshot } from "../../sheet/sheetSnapshot";

export interface CollectedCells {
  readonly put: (row: number, column: number, value: Cell, formula: string | null) => void;
  readonly has: (row: number, column: number) => boolean;
  /** The smallest block that holds every cell put in. */
  readonly usedRange: () => Pick<SheetSnapshot, "firstRow" | "firstColumn" | "values" | "formulas">;
}

/** The cells of one row as far as they were put in; a cell of which nothing was said is undefined. */
interface Line {
  readonly values: (Cell | undefined)[];
  readonly formulas: (string | null | undefined)[];
}

/**
 * Gathers a sheet's cells, in any order, into its used range; what holds neither value nor formula is passed over.
 *
 * A sheet is gathered again after every edit, so nothing is made for a single cell.
 */
export function collectCells(): CollectedCells {
  const lines = new Map<number, Line>();
  let firstRow = Infinity;
  let lastRow = -1;
  let firstColumn = Infinity;
  let lastColumn = -1;
  const put: CollectedCells["put"] = (row, column, value, formula) => {
    if (value === null && formula === null) return;
    let line = lines.get(row);
    if (line === undefined) lines.set(row, (line = { values: [], formulas: [] }));
    line.values[column] = value;
    line.formulas[column] = formula;
    if (row < firstRow) firstRow = row;
    if (row > lastRow) lastRow = row;
    if (column < firstColumn) firstColumn = column;
    if (column > lastColumn) lastColumn = column;
  };
  const usedRange: CollectedCells["usedRange"] = () => {
    if (lines.size === 0) return { firstRow: 0, firstColumn: 0, values: [], formulas: [] };
    const values: Cell[][] = [];
    const formulas: (string | null)[][] = [];
    for (let row = firstRow; row <= lastRow; row++) {
      const line = lines.get(row);
      const valuesHere: Cell[] = [];
      const formulasHere: (string | null)[] = [];
      for (let column = firstColumn; column <= lastColumn; column++) {
        valuesHere.push(line?.values[column] ?? null);
        formulasHere.push(line?.formulas[column] ?? null);
      }
      values.push(valuesHere);
      formulas.push(formulasHere);
    }
    return { firstRow, firstColumn, values, formulas };
  };
  return { put, has: (row, column) => lines.get(row)?.values[column] !== undefined, usedRange };
}
