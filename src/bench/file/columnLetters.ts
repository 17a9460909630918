import { cellName } from "../../sheet/cellName";

/** The letters of a column that counts from 0. */
export function columnLetters(column: number): string {
  return cellName(0, column).slice(0, -1);
}
