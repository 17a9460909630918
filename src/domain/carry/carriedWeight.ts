import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { carriedGrams } from "./carriedGrams";
import type { CarriedPieces } from "./carriedPieces";

/** The weight of all the rows in a unit of so many grams, clean to a billionth of it. Problems: those of carriedGrams. */
export function carriedWeight(pieces: CarriedPieces, gramsPerUnit: number): Outcome<number> {
  const grams = carriedGrams(pieces);
  // 2 lb are 907.18474 g, which divided by the grams in a pound need not be 2 to the last bit.
  return grams.ok ? succeed(Math.round((grams.value / gramsPerUnit) * 1e9) / 1e9) : grams;
}
