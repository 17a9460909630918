import type { NotedCell } from "./notedCell";

/** A cell of the workbook that says what one bag may weigh. */
export interface BagLimitNote extends NotedCell {
  readonly grams: number;
}
