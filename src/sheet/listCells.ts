import { cellName } from "./cellName";

/** Cells by name for a sentence, at most ten: "B2, C4 and 3 more". */
export function listCells(cells: readonly { readonly row: number; readonly column: number }[]): string {
  const named = cells.slice(0, 10).map((cell) => cellName(cell.row, cell.column));
  const more = cells.length - named.length;
  return more > 0 ? `${named.join(", ")} and ${more} more` : named.join(", ");
}
