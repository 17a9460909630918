import type { FieldValue } from "../fieldValue";
import type { PieceRow } from "./pieceRow";

/** The day a piece is due back: the day it was extended to where there is one, else its due day. */
export function returnDay(piece: Pick<PieceRow, "due" | "extendedTo">): FieldValue<number> {
  return piece.extendedTo ?? piece.due;
}
