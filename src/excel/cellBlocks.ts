/** A rectangle of cells of one sheet, each with the item that asked for it, row by row. */
export interface CellBlock<T> {
  readonly row: number;
  readonly column: number;
  readonly items: readonly (readonly T[])[];
}

interface Placed {
  readonly at: { readonly row: number; readonly column: number };
}

/**
 * Items of one sheet gathered into rectangles without gaps, so that a repair of a whole column is one range and not a
 * thousand. First runs down each column, then runs of equal rows in neighbouring columns side by side.
 */
export function cellBlocks<T extends Placed>(items: readonly T[]): CellBlock<T>[] {
  const sorted = [...items].sort((one, other) => one.at.column - other.at.column || one.at.row - other.at.row);
  const runs: T[][] = [];
  for (const item of sorted) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && last.at.column === item.at.column && last.at.row + 1 === item.at.row) run.push(item);
    else runs.push([item]);
  }
  // Open rectangles by their rows, "first:count", with the column that would continue them.
  const open = new Map<string, { row: number; column: number; columns: T[][] }>();
  const blocks: { row: number; column: number; columns: T[][] }[] = [];
  for (const run of runs) {
    const { row, column } = (run[0] as T).at;
    const key = `${row}:${run.length}`;
    const block = open.get(key);
    if (block && block.column + block.columns.length === column) {
      block.columns.push(run);
    } else {
      const started = { row, column, columns: [run] };
      open.set(key, started);
      blocks.push(started);
    }
  }
  return blocks.map(({ row, column, columns }) => ({
    row,
    column,
    items: (columns[0] as T[]).map((_, r) => columns.map((run) => run[r] as T)),
  }));
}
