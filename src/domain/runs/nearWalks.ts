import type { WalkRules } from "./walkRules";

/** What a walk costs, reckoned from its end: less is better, Infinity cannot be. */
interface WalkCost {
  /** On leaving its last place. */
  readonly atEnd: (place: number) => number;
  /** On arriving at a stop, from what it costs on leaving it. */
  readonly visit: (stop: number, cost: number) => number;
  /** On leaving a place, from what it costs on arriving at the next. */
  readonly leave: (place: number, next: number, cost: number) => number;
}

/** The least cost on leaving a place with so many stops to come, none of them near and in a set of stops met already. */
export type LeastWalk = (place: number, toCome: number, met: number) => number;

/**
 * The least walks from any place over up to `toMeet` stops, which may come to a stop again only after they have been far from it: the
 * ng-route relaxation of Baldacci, Mingozzi and Roberti (2011). Where `orMore`, over so many stops or more of them.
 */
export function nearWalks(rules: WalkRules, toMeet: number, cost: WalkCost, orMore = false): LeastWalk {
  const { nearOf, carried, nearOfLow, nearOfHigh, mayFollow, countBefore, countAfter } = rules;
  const size = nearOf.length;
  const masks = carried[0]![0]!.length;
  const least = new Float64Array((toMeet + 1) * size * masks).fill(Infinity);
  let arriving = new Float64Array(size * masks);
  for (let toCome = 0; toCome <= toMeet; toCome++) {
    const nextArriving = new Float64Array(size * masks).fill(Infinity);
    for (let place = 0; place < size; place++) {
      if (place > 0 && (toCome < countAfter[place]! || toCome >= toMeet - countBefore[place]!)) continue;
      const from = (toCome * size + place) * masks;
      const here = least.subarray(from, from + masks);
      if (toCome === 0) here[0] = cost.atEnd(place);
      for (let next = 1; next < size && toCome > 0; next++) {
        if (next === place || !mayFollow[place]![next]!) continue;
        const at = nearOf[next]!.indexOf(place);
        const placeBit = at < 0 ? 0 : 1 << at;
        const carry = carried[next]![place]!;
        for (let mask = 0; mask < masks; mask++) {
          const then = arriving[next * masks + mask]!;
          if (then === Infinity || mask & placeBit) continue;
          const now = cost.leave(place, next, then);
          if (now < here[carry[mask]!]!) here[carry[mask]!] = now;
        }
      }
      for (let mask = 0; mask < masks && place > 0; mask++)
        if (here[mask]! < Infinity) nextArriving[place * masks + mask] = cost.visit(place, here[mask]!);
      // A walk that comes to fewer of the near stops does where more of them may come.
      for (let bit = 1; bit < masks; bit <<= 1)
        for (let mask = 0; mask < masks; mask++)
          if (mask & bit && here[mask ^ bit]! < here[mask]!) here[mask] = here[mask ^ bit]!;
    }
    arriving = nextArriving;
  }
  for (let cell = toMeet * size * masks - 1; cell >= 0 && orMore; cell--)
    least[cell] = Math.min(least[cell]!, least[cell + size * masks]!);
  return (place, toCome, met) => {
    const gone = nearOfLow[place]![met & 1023]! | nearOfHigh[place]![met >> 10]!;
    return least[(toCome * size + place) * masks + masks - 1 - gone]!;
  };
}
