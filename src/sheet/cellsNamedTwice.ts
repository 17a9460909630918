import type { CellEdit } from "./cellEdit";
import type { CellPosition } from "./cellPosition";

/** The cells that a step names a second time: what it wants of them is not said. */
export function cellsNamedTwice(edits: readonly CellEdit[]): readonly CellPosition[] {
  const seen = new Set<string>();
  return edits
    .map((edit) => edit.at)
    .filter(({ sheetId, row, column }) => {
      const key = `${sheetId} ${row} ${column}`;
      return seen.has(key) || !seen.add(key);
    });
}
