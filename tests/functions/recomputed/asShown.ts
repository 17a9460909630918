/** Cells as a result shows them: blank is "", also a blank day that arrived as 0. */
export function asShown(rows: readonly (readonly unknown[])[]): unknown[][] {
  return rows.map((row) => row.map((cell) => (cell === null || cell === 0 ? "" : cell)));
}
