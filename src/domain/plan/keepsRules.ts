import type { OrderRules } from "./orderRules";

/** Whether an order of all things keeps the rules. */
export function keepsRules({ before, placeOf }: OrderRules, order: readonly number[]): boolean {
  const placed = new Uint8Array(order.length);
  for (let place = 0; place < order.length; place++) {
    const thing = order[place]!;
    if (placeOf[thing]! >= 0 && placeOf[thing] !== place) return false;
    for (const other of before[thing]!) if (placed[other] === 0) return false;
    placed[thing] = 1;
  }
  return true;
}
