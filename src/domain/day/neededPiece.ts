import type { PieceRow } from "../loans/pieceRow";

/** A look as a piece names it; no table need list it. */
export interface NeedingLook {
  readonly name: string;
  readonly key: string;
}

/** A piece with the looks that need it. */
export interface NeededPiece {
  readonly row: PieceRow;
  /** Pieces that name their looks alike may share one list. */
  readonly looks: readonly NeedingLook[];
}

/** The rows of a pieces table in sheet order, each read when it is asked for. */
export interface NeededPieces {
  readonly count: number;
  readonly at: (index: number) => NeededPiece;
  /** False for the stylist's own, which is there without ever going out. */
  readonly isBorrowed: (row: PieceRow) => boolean;
}
