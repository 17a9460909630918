import type { Problem } from "../problem";

/** A row that is late, or one of which it cannot be told because a cell cannot be read. */
export interface LateRow {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  /** Whole days past the day it was due, at least 1; or what keeps it from being told. */
  readonly daysLate: number | Problem;
}
