import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import { needed } from "../../domain/needed";
import { showGiven } from "../../domain/showGiven";
import { readGrams } from "../../sheet/readGrams";

const GRAMS_PER_KG = 1000;

/** What a bag may weigh, as BAGS reads its limit: kilograms where no unit is typed. Problem: argument-missing, argument-not-usable. */
export function readBagLimit(typed: string): Outcome<number> {
  const argument = "Bag limit";
  const expected = "a weight above 0, such as 10 or 10 kg";
  const grams = needed(readGrams(typed, argument, GRAMS_PER_KG), argument, expected);
  if (grams.ok && Math.round(grams.value) < 1)
    return fail("argument-not-usable", { argument, given: showGiven(typed), expected });
  return grams;
}
