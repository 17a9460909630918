import { keepsRules } from "./keepsRules";
import type { OrderRules } from "./orderRules";

/**
 * An order that keeps the rules, null where none does: the things as they are numbered, if that will do, else at each
 * place whatever must come soonest, the lowest number where tied.
 *
 * Things that take one place each, between a first and a last that agree with what comes before what, are ordered so
 * whenever they can be ordered at all (unit tasks with release times and deadlines, Simons 1978).
 */
export function orderWithin(rules: OrderRules): readonly number[] | null {
  const { count, before, placeOf } = rules;
  const numbered = Array.from({ length: count }, (_, thing) => thing);
  if (keepsRules(rules, numbered)) return numbered;
  const soonest = soonestPlaces(before, placeOf);
  const latest = latestPlaces(before, placeOf);
  const open = numbered.sort((a, b) => latest[a]! - latest[b]! || a - b);
  const order: number[] = [];
  while (open.length > 0) {
    const next = open.findIndex((thing) => soonest[thing]! <= order.length);
    if (next < 0 || latest[open[next]!]! < order.length) return null;
    order.push(...open.splice(next, 1));
  }
  return order;
}

/** The first place each thing could have, by its own place and by what must come before it. */
function soonestPlaces(before: OrderRules["before"], placeOf: readonly number[]): number[] {
  const soonest = placeOf.map((place) => Math.max(0, place));
  for (let isSettled = false; !isSettled;) {
    isSettled = true;
    before.forEach((others, thing) => {
      const place = Math.max(soonest[thing]!, ...others.map((other) => soonest[other]! + 1));
      if (place > soonest[thing]!) isSettled = false;
      soonest[thing] = place;
    });
  }
  return soonest;
}

/** The last place each thing could have, by its own place and by what must come after it. */
function latestPlaces(before: OrderRules["before"], placeOf: readonly number[]): number[] {
  const latest = placeOf.map((place) => (place < 0 ? placeOf.length - 1 : place));
  for (let isSettled = false; !isSettled;) {
    isSettled = true;
    before.forEach((others, thing) => {
      for (const other of others) {
        if (latest[other]! < latest[thing]!) continue;
        latest[other] = latest[thing]! - 1;
        isSettled = false;
      }
    });
  }
  return latest;
}
