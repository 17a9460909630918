import type { NotedCell } from "./notedCell";

/** A figure with the cell that says it. */
export interface NotedFigure extends NotedCell {
  readonly value: number;
}
