const GRAMS_PER_KG = 1000;

/** "12.4 kg", to the nearest hundred grams; what is lighter is said in grams. */
export function sayWeight(grams: number): string {
  return grams > 0 && grams < 100 ? `${Math.round(grams)} g` : `${(grams / GRAMS_PER_KG).toFixed(1)} kg`;
}
