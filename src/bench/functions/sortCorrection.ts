import { plainValue } from "./plainValue";

/**
 * SORT as its documentation says. The engine's own changes its input in place, so that every later look-up on the same
 * range is silently wrong.
 */
export function sortCorrection(cells: unknown[][], index?: unknown, order?: unknown, byColumn?: unknown): unknown[][] {
  const across = plainValue(byColumn) === true || plainValue(byColumn) === 1;
  const lines = across ? transpose(cells) : cells.map((row) => [...row]);
  const key = Number(plainValue(index) ?? 1) - 1;
  const direction = Number(plainValue(order) ?? 1);
  if (!(key >= 0 && key < (lines[0]?.length ?? 0)) || Math.abs(direction) !== 1) throw new Error("SORT");
  const sorted = lines
    .map((line, position) => ({ line, position }))
    .sort((a, b) => compare(plainValue(a.line[key]), plainValue(b.line[key]), direction) || a.position - b.position)
    .map(({ line }) => line);
  return across ? transpose(sorted) : sorted;
}

function transpose(cells: readonly unknown[][]): unknown[][] {
  return (cells[0] ?? []).map((_, column) => cells.map((row) => row[column]));
}

/** Numbers before text before logical values; blanks stay last in either direction. */
function compare(a: unknown, b: unknown, direction: number): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? 1 : -1;
  const rank = (value: unknown) => ["number", "string", "boolean"].indexOf(typeof value);
  if (rank(a) !== rank(b)) return direction * (rank(a) - rank(b));
  if (typeof a === "string") return direction * a.localeCompare(String(b), undefined, { sensitivity: "accent" });
  return direction * (Number(a) - Number(b));
}
