import { columnLetters } from "./columnLetters";

/** The name of a cell as the grid shows it: row 0, column 0 is A1. */
export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}
