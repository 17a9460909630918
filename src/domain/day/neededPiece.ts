import type { PieceRow } from "../loans/pieceRow";

/** A piece with the looks that need it. */
export interface NeededPiece {
  readonly row: PieceRow;
  /** The looks by name and key, as the piece names them; one that no table lists may be among them. */
  readonly looks: readonly { readonly name: string; readonly key: string }[];
  /** False for the stylist's own, which is there without ever going out. */
  readonly isBorrowed: boolean;
}
