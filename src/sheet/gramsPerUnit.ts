/**
 * Grams in one unit of weight, or null where the text names none. kg, g, lb and oz with their names in five languages.
 *
 * One pound is 453.59237 g exactly, one ounce a sixteenth of it (international yard and pound agreement, 1959).
 */
export function gramsPerUnit(unit: string): number | null {
  const plain = unit
    .normalize("NFD")
    .replace(/[\u0300-\u036f.\s]/g, "")
    .toLowerCase();
  if (/^(kg|kgs|kilo|kilos|kilogramm?e?s?|chili|chilogramm[oi]|kilogramos?)$/.test(plain)) return 1000;
  if (/^(g|gr|grs|gms?|gramm?e?s?|gramm[oi]|gramos?)$/.test(plain)) return 1;
  if (/^(lb|lbs|pounds?)$/.test(plain)) return 453.59237;
  return /^(oz|ozs|ounces?|onces?|onzas?|unzen?|onc[ei]a?)$/.test(plain) ? 28.349523125 : null;
}
