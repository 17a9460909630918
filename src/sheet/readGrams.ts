import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readWeight } from "./readWeight";

/** A weight in grams, a bare number in the unit given; blank is null. Problems: those of readWeight. */
export function readGrams(raw: unknown, argument: string, gramsPerBareUnit: number): Outcome<number | null> {
  const weight = readWeight(raw, argument);
  if (!weight.ok) return weight;
  return succeed(weight.value === null ? null : (weight.value.grams ?? weight.value.bareAmount! * gramsPerBareUnit));
}
