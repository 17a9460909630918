import type { Problem } from "../problem";

/** A row that came back short or damaged. A figure that depends on a cell that cannot be read is its problem. */
export interface Shortage {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  readonly piecesMissing: number | Problem;
  readonly isDamaged: boolean | Problem;
  /** null where pieces are missing and the row has no value. */
  readonly valueMissing: number | null | Problem;
}
