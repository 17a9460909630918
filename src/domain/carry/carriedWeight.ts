import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { carriedGrams } from "./carriedGrams";
import type { CarriedPieces } from "./carriedPieces";
import { gramsInUnit } from "./gramsInUnit";

/** The weight of all the rows in a unit of so many grams. Problems: those of carriedGrams. */
export function carriedWeight(pieces: CarriedPieces, gramsPerUnit: number): Outcome<number> {
  const carried = carriedGrams(pieces);
  return carried.ok
    ? succeed(gramsInUnit(carried.value.weighedGrams + carried.value.estimatedGrams, gramsPerUnit))
    : carried;
}
