import { cellName } from "../../sheet/cellName";

/** A column as the grid names it: 0 is A. */
export function columnLetters(column: number): string {
  return cellName(0, column).slice(0, -1);
}
