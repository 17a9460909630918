import type { CellPosition } from "../../sheet/cellPosition";

/** One row of pieces as Today lists it. */
export interface LoanLine {
  /** The cell that says when it is due, or the nearest to it. */
  readonly at: CellPosition;
  readonly sheetName: string;
  /** Piece number and description, as far as they are there. */
  readonly name: string;
  /** "" where the row names none. */
  readonly lender: string;
  /** The day it is due back, extended or not. */
  readonly due: number;
  /** How many of the row's pieces are still out. */
  readonly quantity: number;
  /** Of what is still out; null where there is none or it cannot be read. */
  readonly value: number | null;
  /** "" where the sheet names none. */
  readonly currency: string;
}
