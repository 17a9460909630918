import type { MeantPiece } from "./messyPieces";

/** How many pieces of a row there are. */
export function quantityOf(piece: MeantPiece): number {
  return piece.quantity ?? 1;
}

/** How many of a row are held at the close of a day, or with its back day counted as held. */
export function heldOn(piece: MeantPiece, day: number, countsBackDay = false): number {
  if (piece.settled !== null || piece.out === null || piece.out > day) return 0;
  const isBack = piece.back !== null && (countsBackDay ? piece.back < day : piece.back <= day);
  if (!isBack) return quantityOf(piece);
  return piece.quantityBack === null ? 0 : quantityOf(piece) - piece.quantityBack;
}

/** The day a row is due. */
export function dueOf(piece: MeantPiece): number | null {
  return piece.extendedTo ?? piece.due;
}
