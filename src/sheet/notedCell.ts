import type { Cell } from "./cell";
import type { CellPosition } from "./cellPosition";

/** A cell that says something of the workbook, in a table or beside them. */
export interface NotedCell {
  readonly at: CellPosition;
  readonly sheetName: string;
  /** What stands beside or above it to say what it is, as typed. */
  readonly heading: string;
  /** What it holds. */
  readonly raw: Cell;
}
