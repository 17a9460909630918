import type { PieceRow } from "./pieceRow";

/** The rows of a pieces table in sheet order, each read when it is asked for, so that no row outlives its use. */
export interface PieceRows {
  readonly count: number;
  /** The row at a place from 0 up to count; each call reads it anew. */
  readonly at: (index: number) => PieceRow;
  /** Whether amounts must be kept apart by currency: there is a Currency column, or values carry different signs. */
  readonly hasCurrencies: boolean;
}
