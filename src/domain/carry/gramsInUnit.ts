/** Grams in a unit of so many grams, clean to a billionth of it: 2 lb are 907.18474 g, which divided by the grams in a pound need not be 2 to the last bit. */
export function gramsInUnit(grams: number, gramsPerUnit: number): number {
  return Math.round((grams / gramsPerUnit) * 1e9) / 1e9;
}
