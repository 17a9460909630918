import type { PieceRow } from "../../../src/domain/loans/pieceRow";

/** One physical piece on a day, as a stylist would list them one by one. */
interface SinglePiece {
  readonly lender: string;
  readonly currency: string;
  readonly cents: number | null;
  readonly due: number | null;
  readonly row: number;
}

/**
 * The second, slower computation: lays out every single piece of every readable row on its own and follows
 * it day by day from the day it went out, instead of comparing dates. Values are whole cents.
 */
export function singlePiecesHeld(
  rows: readonly PieceRow[],
  day: number,
  countBackDay: boolean,
): readonly SinglePiece[] {
  const held: SinglePiece[] = [];
  for (const piece of rows) {
    if (typeof piece.out !== "number" || piece.settled === true) continue;
    const quantity = piece.quantity === null || piece.quantity === 0 ? 1 : (piece.quantity as number);
    const returned =
      piece.quantityBack === null || piece.quantityBack === 0 ? quantity : (piece.quantityBack as number);
    for (let number = 1; number <= quantity; number++) {
      let isHere = false;
      for (let date = piece.out; date <= day; date++) {
        isHere = true;
        const comesBack = number <= returned && typeof piece.back === "number";
        if (comesBack && (countBackDay ? date > (piece.back as number) : date >= (piece.back as number)))
          isHere = false;
        if (!isHere) break;
      }
      if (!isHere) continue;
      held.push({
        lender: (piece.lender as string | null) ?? "",
        currency: (piece.currency as string | null) ?? "",
        cents:
          typeof piece.value === "number" && piece.value !== 0 ? Number(piece.value.toFixed(2).replace(".", "")) : null,
        due: (piece.extendedTo ?? piece.due) as number | null,
        row: piece.row,
      });
    }
  }
  return held;
}
