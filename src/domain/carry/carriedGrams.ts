import { fail } from "../fail";
import { isProblem } from "../isProblem";
import type { Outcome } from "../outcome";
import { showGiven } from "../showGiven";
import { succeed } from "../succeed";
import type { CarriedPiece, CarriedPieces } from "./carriedPieces";
import { typicalGrams } from "./typicalGrams";

const EXPECTED = "the weight in that row, or a kind such as coat, dress, shoes or bag";

/**
 * The weight of all the rows in grams: the sheet's weight of one piece, else what its kind typically weighs, times the quantity.
 *
 * All rows are carried, whether out, back or settled: one passes the rows one is about to carry. 0 for no rows. Problems: the
 * first cell that cannot be read; argument-missing or argument-not-usable for a row with neither a weight nor a kind of
 * known weight.
 */
export function carriedGrams(pieces: CarriedPieces): Outcome<number> {
  let totalGrams = 0;
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const { quantity } = piece;
    if (isProblem(quantity)) return { ok: false, problem: quantity };
    const grams = gramsOfOne(piece);
    if (!grams.ok) return grams;
    totalGrams += grams.value * (quantity || 1);
  }
  return succeed(totalGrams);
}

function gramsOfOne({ grams, kind, where, named }: CarriedPiece): Outcome<number> {
  if (isProblem(grams)) return { ok: false, problem: grams };
  if (grams !== null) return succeed(grams);
  if (isProblem(kind)) return { ok: false, problem: kind };
  const typical = kind === null ? null : typicalGrams(kind);
  if (typical !== null) return succeed(typical);
  if (named === "") return fail("argument-missing", { argument: where, expected: EXPECTED });
  return fail("argument-not-usable", { argument: where, given: showGiven(named), expected: EXPECTED });
}
