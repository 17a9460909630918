import type { OrderRules } from "./orderRules";
import type { OrderSteps } from "./orderSteps";

/** What every order costs at least: the least bound there is with one thing placed. Infinity where nothing may come first. */
export function firstBound<State>({ count, before, placeOf }: OrderRules, steps: OrderSteps<State>): number {
  const all = Array.from({ length: count }, (_, thing) => thing);
  const fixed = placeOf.indexOf(0);
  let least = Infinity;
  for (const thing of all) {
    if (before[thing]!.length > 0 || (fixed >= 0 ? thing !== fixed : placeOf[thing]! > 0)) continue;
    const left = all.filter((other) => other !== thing);
    const state = steps.next(steps.open, { thing, before: null }, left, Infinity);
    if (state !== null) least = Math.min(least, steps.bound(state));
  }
  return least;
}
