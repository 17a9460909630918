import type { OrderRules } from "./orderRules";
import type { OrderSteps } from "./orderSteps";
import { orderOfTrail } from "./orderOfTrail";
import type { OrderTrail } from "./orderTrail";
import type { Stepwise } from "./stepwise";

/** What a layered search came to. */
export interface LayeredOrder {
  /** The best order that costs less than the limit, or null. */
  readonly order: readonly number[] | null;
  /** No order costs less than this: the limit itself, or the order's cost, where nothing had to be dropped. */
  readonly bound: number;
  /** How many beginnings were looked at. */
  readonly beginnings: number;
}

interface Node<State> {
  readonly state: State;
  readonly trail: OrderTrail | null;
  readonly left: readonly number[];
  readonly bound: number;
  readonly standing: readonly number[] | null;
}

/** Beginnings between two stops for breath. */
const BEGINNINGS_A_BREATH = 1000;
/** The share of what is left to look at that one layer may take. */
const SHARE_OF_A_LAYER = 1 / 2;

/**
 * The best order that costs less than `limit`, built in layers: all promising beginnings of one thing, of two, and so on.
 *
 * A beginning goes no further when its bound reaches the limit, or when another of the same things outdoes it. With at
 * most `width` beginnings in every layer the answer is proved: that is dynamic programming over sets (Held and Karp
 * 1962) with bounds. Where a layer has more, or more than can be gone on from with `mostBeginnings` in all, the best by
 * bound go on, of equal ones the cheapest so far, and `bound` is the least of what was dropped.
 */
export function* layeredOrder<State>(
  rules: OrderRules,
  steps: OrderSteps<State>,
  limit: number,
  width: number,
  mostBeginnings = Infinity,
): Stepwise<LayeredOrder> {
  const all = Array.from({ length: rules.count }, (_, thing) => thing);
  const fixedAt = new Map(rules.placeOf.map((place, thing) => [place, thing]));
  let layer: Node<State>[] = [{ state: steps.open, trail: null, left: all, bound: -Infinity, standing: null }];
  let leastDropped = limit;
  let beginnings = 0;
  for (let place = 0; place < rules.count && layer.length > 0; place++) {
    const fixed = fixedAt.get(place);
    const best = new Map<string, Node<State>[]>();
    const kept: Node<State>[] = [];
    for (const node of layer) {
      for (const thing of node.left) {
        if (fixed === undefined ? rules.placeOf[thing]! >= 0 : thing !== fixed) continue;
        if (rules.before[thing]!.some((other) => node.left.includes(other))) continue;
        const left = node.left.filter((other) => other !== thing);
        beginnings++;
        if (beginnings % BEGINNINGS_A_BREATH === 0) yield;
        const trail = { thing, before: node.trail };
        const state = steps.next(node.state, trail, left, limit);
        if (state === null) continue;
        const bound = Math.max(node.bound, steps.bound(state));
        const child = { state, trail, left, bound, standing: steps.standing(state) };
        if (child.standing === null) kept.push(child);
        else addUnlessOutdone(best, String.fromCharCode(...left) + steps.key(state), child, steps.needsEqual(state));
      }
    }
    for (const nodes of best.values()) for (const node of nodes) kept.push(node);
    const next = Math.max(1, rules.count - place - 1);
    const most = Math.min(width, Math.max(1, Math.floor(((mostBeginnings - beginnings) * SHARE_OF_A_LAYER) / next)));
    if (kept.length > most) {
      kept.sort((a, b) => a.bound - b.bound || steps.costSoFar(a.state) - steps.costSoFar(b.state));
      leastDropped = Math.min(leastDropped, kept[most]!.bound);
      kept.length = most;
    }
    layer = kept;
  }
  const cheapest = layer.reduce<Node<State> | null>((a, b) => (a === null || b.bound < a.bound ? b : a), null);
  if (cheapest === null || rules.count === 0) return { order: null, bound: leastDropped, beginnings };
  return { order: orderOfTrail(cheapest.trail), bound: Math.min(leastDropped, cheapest.bound), beginnings };
}

function addUnlessOutdone<State>(
  best: Map<string, Node<State>[]>,
  key: string,
  child: Node<State>,
  needsEqual: boolean,
): void {
  const rivals = best.get(key);
  if (rivals === undefined) best.set(key, [child]);
  else {
    for (const rival of rivals) if (outdoes(rival, child, needsEqual)) return;
    let count = 0;
    for (const rival of rivals) if (!outdoes(child, rival, needsEqual)) rivals[count++] = rival;
    rivals.length = count;
    rivals.push(child);
  }
}

function outdoes<State>(one: Node<State>, other: Node<State>, needsEqual: boolean): boolean {
  const a = one.standing!;
  const b = other.standing!;
  for (let at = 0; at < a.length; at++) if (needsEqual ? a[at] !== b[at] : a[at]! > b[at]!) return false;
  return true;
}
