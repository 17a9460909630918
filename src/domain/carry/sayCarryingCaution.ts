import type { CarryingCaution } from "./carryingCaution";

const GRAMS_PER_KG = 1000;
const GRAMS_PER_POUND = 453.59237;

/** A caution in one sentence, in both systems of weight. */
export function sayCarryingCaution({ grams, liftIndex, isOverPractice }: CarryingCaution): string {
  const weighs = `${(grams / GRAMS_PER_KG).toFixed(1)} kg (${(grams / GRAMS_PER_POUND).toFixed(0)} lb)`;
  // Without the 50 lb: a little more is said as 50 lb too.
  if (isOverPractice)
    return `${weighs} is past what stylists are known to carry, which is no safe load either; share it out or go twice.`;
  return `${weighs} is ${liftIndex.toFixed(2)} times what the NIOSH lifting equation allows for soft bags in the easiest lift; take some out.`;
}
