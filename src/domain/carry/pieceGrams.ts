import { fail } from "../fail";
import { isProblem } from "../isProblem";
import type { Outcome } from "../outcome";
import { showGiven } from "../showGiven";
import { succeed } from "../succeed";
import type { CarriedPiece } from "./carriedPieces";
import { typicalGrams } from "./typicalGrams";

/** What one piece weighs, and whether that is what its kind typically weighs, for want of a weight. */
interface PieceGrams {
  readonly grams: number;
  readonly isEstimated: boolean;
}

const EXPECTED = "the weight in that row, or a kind such as coat, dress, shoes or bag";

/**
 * The weight of one piece of a row in grams: the sheet's, else what its kind typically weighs.
 *
 * Problems: the cell that cannot be read; argument-missing or argument-not-usable for a row with neither a weight nor a kind of
 * known weight.
 */
export function pieceGrams({ grams, kind, where, named }: CarriedPiece): Outcome<PieceGrams> {
  if (isProblem(grams)) return { ok: false, problem: grams };
  if (grams !== null) return succeed({ grams, isEstimated: false });
  if (isProblem(kind)) return { ok: false, problem: kind };
  const typical = kind === null ? null : typicalGrams(kind);
  if (typical !== null) return succeed({ grams: typical, isEstimated: true });
  if (named === "") return fail("argument-missing", { argument: where, expected: EXPECTED });
  return fail("argument-not-usable", { argument: where, given: showGiven(named), expected: EXPECTED });
}
