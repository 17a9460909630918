import { type LeastWalk, nearWalks } from "./nearWalks";
import type { Run } from "./run";
import { walkRules } from "./walkRules";
import type { WalkRules } from "./walkRules";

/** Bounds from below the travel that is still to come of a run. */
export interface CompletionBound {
  /** To be added for each stop that is not met yet. */
  readonly priceMs: readonly number[];
  /** The least with so many stops to come, without their prices. */
  readonly leastMs: LeastWalk;
}

/** What an order comes to whose travel is to be bounded. */
interface Bounded {
  /** How many stops it meets. */
  readonly toMeet: number;
  /** Whether a stop may be one of those left out. */
  readonly mayMiss: (stop: number) => boolean;
  /** The stops that each must come after: bit 0 is stop 1. */
  readonly mustFollow: readonly number[];
  /** The travel of an order found otherwise; it only sets how far a price moves at a time. */
  readonly targetMs: number;
}

/** For each stop above so few that their orders are soon tried. */
const ROUNDS = { above: 8, each: 6 };
/** Few while the prices are sought, then as many as sharpen the bound for little. */
const REMEMBERED = { atFirst: 3, atLast: 8 };

/**
 * A bound on the travel to come by walks with a price on each stop that rises while walks pass it by and falls while they meet it too
 * often: state-space relaxation (Christofides, Mingozzi and Toth 1981) with Lagrange multipliers by subgradient steps. A stop that may
 * be left out has no price above 0.
 */
export function completionBound(run: Run, { toMeet, mayMiss, mustFollow, targetMs }: Bounded): CompletionBound {
  const rules = walkRules(run, REMEMBERED.atFirst, mustFollow);
  let priceMs: readonly number[] = run.rank.map(() => 0);
  let best = { boundMs: -Infinity, priceMs };
  const rounds = ROUNDS.each * (run.stopCount - ROUNDS.above);
  for (let round = 0; round < rounds; round++) {
    const least = pricedWalks(run, rules, toMeet, priceMs);
    const boundMs = priceMs.reduce((sum, price) => sum + price, least(0, toMeet, 0));
    if (boundMs > best.boundMs) best = { boundMs, priceMs };
    const times = timesMet(run, rules, least, toMeet, priceMs);
    const off = times.reduce((sum, met, stop) => sum + (stop === 0 ? 0 : (1 - met) ** 2), 0);
    const stepMs = ((2 - (1.9 * round) / rounds) * (targetMs - boundMs)) / off;
    if (!(stepMs > 0 && stepMs < Infinity)) break;
    priceMs = priceMs.map((price, stop) => {
      const next = stop === 0 ? 0 : price + stepMs * (1 - times[stop]!);
      return mayMiss(stop) ? Math.min(0, next) : next;
    });
  }
  const sharper = walkRules(run, REMEMBERED.atLast, mustFollow);
  return { priceMs: best.priceMs, leastMs: pricedWalks(run, sharper, toMeet, best.priceMs) };
}

function pricedWalks(run: Run, rules: WalkRules, toMeet: number, priceMs: readonly number[]): LeastWalk {
  return nearWalks(rules, toMeet, {
    atEnd: (place) => (run.returns && place !== 0 ? run.travelMs[place]![0]! : 0),
    visit: (stop, cost) => cost - priceMs[stop]!,
    leave: (place, next, cost) => run.travelMs[place]![next]! + cost,
  });
}

/** About how often the least walk from the start meets each stop: what it remembers besides the place before is left out. */
function timesMet(
  run: Run,
  { mayFollow }: WalkRules,
  least: LeastWalk,
  toMeet: number,
  priceMs: readonly number[],
): readonly number[] {
  const times = run.rank.map(() => 0);
  for (let toCome = toMeet, place = 0; toCome > 0; toCome--) {
    let next = 0;
    let leastMs = Infinity;
    for (let stop = 1; stop <= run.stopCount; stop++) {
      if (stop === place || !mayFollow[place]![stop]!) continue;
      const before = place === 0 ? 0 : 1 << (place - 1);
      const wayMs = run.travelMs[place]![stop]! - priceMs[stop]! + least(stop, toCome - 1, before);
      if (wayMs >= leastMs) continue;
      leastMs = wayMs;
      next = stop;
    }
    times[next]!++;
    place = next;
  }
  return times;
}
