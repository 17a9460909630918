import type { Cell } from "../../sheet/cell";
import type { SheetSnapshot } from "../../sheet/sheetSnapshot";

export interface CollectedCells {
  readonly put: (row: number, column: number, value: Cell, formula: string | null) => void;
  readonly has: (row: number, column: number) => boolean;
  /** The smallest block that holds every cell put in. */
  readonly usedRange: () => Pick<SheetSnapshot, "firstRow" | "firstColumn" | "values" | "formulas">;
}

/** Gathers a sheet's cells, in any order, into its used range; what holds neither value nor formula is passed over. */
export function collectCells(): CollectedCells {
  const rows = new Map<number, Map<number, { value: Cell; formula: string | null }>>();
  let firstRow = Infinity;
  let lastRow = -1;
  let firstColumn = Infinity;
  let lastColumn = -1;
  const put: CollectedCells["put"] = (row, column, value, formula) => {
    if (value === null && formula === null) return;
    const line = rows.get(row) ?? new Map<number, { value: Cell; formula: string | null }>();
    line.set(column, { value, formula });
    rows.set(row, line);
    firstRow = Math.min(firstRow, row);
    lastRow = Math.max(lastRow, row);
    firstColumn = Math.min(firstColumn, column);
    lastColumn = Math.max(lastColumn, column);
  };
  const usedRange: CollectedCells["usedRange"] = () => {
    if (rows.size === 0) return { firstRow: 0, firstColumn: 0, values: [], formulas: [] };
    const values: Cell[][] = [];
    const formulas: (string | null)[][] = [];
    for (let row = firstRow; row <= lastRow; row++) {
      const line = rows.get(row);
      const cells = Array.from({ length: lastColumn - firstColumn + 1 }, (_, offset) =>
        line?.get(firstColumn + offset),
      );
      values.push(cells.map((cell) => cell?.value ?? null));
      formulas.push(cells.map((cell) => cell?.formula ?? null));
    }
    return { firstRow, firstColumn, values, formulas };
  };
  return { put, has: (row, column) => rows.get(row)?.has(column) === true, usedRange };
}
