import { isProblem } from "../isProblem";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import type { CarriedPieces } from "./carriedPieces";
import { pieceGrams } from "./pieceGrams";

/** What rows weigh together: by the sheet's weights, and by what kinds typically weigh where the sheet has none. */
interface CarriedGrams {
  readonly weighedGrams: number;
  readonly estimatedGrams: number;
}

/**
 * The weight of all the rows in grams, each times its quantity, with what is estimated kept apart.
 *
 * All rows are carried, whether out, back or settled: one passes the rows one is about to carry. 0 for no rows. Problems: the
 * first of pieceGrams, or a quantity that cannot be read.
 */
export function carriedGrams(pieces: CarriedPieces): Outcome<CarriedGrams> {
  let weighedGrams = 0;
  let estimatedGrams = 0;
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const { quantity } = piece;
    if (isProblem(quantity)) return { ok: false, problem: quantity };
    const grams = pieceGrams(piece);
    if (isProblem(grams)) return { ok: false, problem: grams };
    if (piece.grams === null || piece.isGuess) estimatedGrams += grams * (quantity || 1);
    else weighedGrams += grams * (quantity || 1);
  }
  return succeed({ weighedGrams, estimatedGrams });
}
