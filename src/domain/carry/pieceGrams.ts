import type { Problem } from "../problem";
import { showGiven } from "../showGiven";
import type { CarriedPiece } from "./carriedPieces";
import { typicalGrams } from "./typicalGrams";

const EXPECTED = "the weight in that row, or a kind such as coat, dress, shoes or bag";

/**
 * The weight of one piece of a row in grams: the sheet's, else, where the row has none, what its kind typically weighs.
 *
 * Problems: the cell that cannot be read; argument-missing or argument-not-usable for a row with neither a weight nor a kind of
 * known weight.
 */
export function pieceGrams({ grams, kind, where, named }: CarriedPiece): number | Problem {
  if (grams !== null) return grams;
  if (kind !== null && typeof kind !== "string") return kind;
  const typical = kind === null ? null : typicalGrams(kind);
  if (typical !== null) return typical;
  if (named === "") return { reason: "argument-missing", facts: { argument: where, expected: EXPECTED } };
  return { reason: "argument-not-usable", facts: { argument: where, given: showGiven(named), expected: EXPECTED } };
}
