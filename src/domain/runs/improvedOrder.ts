import { seededRandom } from "../seededRandom";
import { never } from "./never";
import { orderCost } from "./orderCost";
import type { Run } from "./run";
import { runEnd } from "./runEnd";
import type { RunOrder } from "./runOrder";
import { stopWorths } from "./stopWorths";
import { visitEnd } from "./visitEnd";

interface Candidate {
  readonly order: readonly number[];
  readonly worth: number;
  readonly endMs: number;
  readonly travelMs: number;
}

/** Starts anew so often, so that one unlucky beginning does not decide. */
const STARTS = 4;
/** An order that ends later than the best by this share of the run may still be gone on from, at first. */
const LENIENCE = 0.04;
/** At most so many stops are taken out at once. */
const MOST_TAKEN_OUT = 10;

/**
 * The best order found by taking out some neighbouring stops and putting each back where it delays the end least, or by turning a
 * stretch round, over and over; then by what no such single move betters.
 *
 * The same answer everywhere: a seeded generator, and bounded by `steps` (stops looked at), never by the clock. More met, then the more
 * urgent, then an earlier end, then less travel.
 */
export function improvedOrder(run: Run, steps: number): RunOrder {
  const { stopCount, travelMs } = run;
  const worths = stopWorths(run.rank.slice(1));
  const random = seededRandom(1);
  const below = (count: number): number => Math.floor(random() * count);
  const all = Array.from({ length: stopCount }, (_, index) => index + 1);
  let spent = 0;

  function candidate(order: readonly number[]): Candidate {
    spent += order.length;
    const worth = order.reduce((sum, stop) => sum + worths[stop - 1]!, 0);
    return { order, worth, ...orderCost(run, order) };
  }

  /** Puts a stop where the run then ends soonest, with least travel; false where no place will do. */
  function putIn(order: number[], stop: number): boolean {
    const leave = [run.leaveMs];
    order.forEach((at, index) => leave.push(visitEnd(run, at, leave[index]! + travelMs[order[index - 1] ?? 0]![at]!)));
    const endNow = runEnd(run, order.at(-1) ?? 0, leave.at(-1)!);
    let bestAt = -1;
    let bestEnd = never;
    let bestExtra = never;
    for (let at = 0; at <= order.length; at++) {
      const before = order[at - 1] ?? 0;
      const after = at < order.length ? order[at]! : run.returns ? 0 : null;
      let last = stop;
      let over = visitEnd(run, stop, leave[at]! + travelMs[before]![stop]!);
      let next = at;
      // Goes on until the delay is waited away at some door.
      while (next < order.length && over < never) {
        over = visitEnd(run, order[next]!, over + travelMs[last]![order[next]!]!);
        last = order[next]!;
        next++;
        if (over === leave[next]) break;
      }
      spent += next - at + 1;
      const end = next < order.length && over < never ? endNow : runEnd(run, last, over);
      const extra =
        travelMs[before]![stop]! + (after === null ? 0 : travelMs[stop]![after]! - travelMs[before]![after]!);
      if (end < bestEnd || (end === bestEnd && extra < bestExtra)) {
        bestAt = at;
        bestEnd = end;
        bestExtra = extra;
      }
    }
    if (bestEnd === never) return false;
    order.splice(bestAt, 0, stop);
    return true;
  }

  function putAllIn(order: number[], stops: readonly number[]): Candidate {
    for (const stop of stops) putIn(order, stop);
    return candidate(order);
  }

  /** The stops to put in, in an order drawn by lot: any, the soonest closed first, or the farthest first; the urgent before the others. */
  function drawnOrder(stops: readonly number[]): readonly number[] {
    const way = below(3);
    const keyed = stops.map((stop) => {
      const last = run.beginMs[stop]!.at(-1) ?? 0;
      return { stop, key: way === 0 ? random() : way === 1 ? last : -travelMs[0]![stop]! };
    });
    keyed.sort((a, b) => run.rank[a.stop]! - run.rank[b.stop]! || a.key - b.key || a.stop - b.stop);
    return keyed.map(({ stop }) => stop);
  }

  function neighbour({ order }: Candidate): Candidate {
    if (order.length > 2 && below(4) === 0) {
      const from = below(order.length - 1);
      return candidate(turned(order, from, from + 2 + below(order.length - from - 1)));
    }
    const count = 1 + below(Math.min(MOST_TAKEN_OUT, order.length));
    const near = order.length === 0 ? 0 : order[below(order.length)]!;
    const distance = (stop: number): number => travelMs[near]![stop]! + travelMs[stop]![near]!;
    const place = order.indexOf(near);
    const first = Math.max(0, place - below(count));
    const out =
      below(2) === 0
        ? order.slice(first, first + count)
        : [...order].sort((a, b) => distance(a) - distance(b) || a - b).slice(0, count);
    const left = order.filter((stop) => !out.includes(stop));
    return putAllIn(left, drawnOrder(all.filter((stop) => !left.includes(stop))));
  }

  /** What no turning of a stretch and no moving of up to three stops betters. */
  function polished(from: Candidate): Candidate {
    let best = from;
    for (let found = true; found && spent < steps * 2;) {
      found = false;
      for (let first = 0; first < best.order.length; first++) {
        for (let until = first + 1; until <= best.order.length; until++) {
          const tries = [turned(best.order, first, until)];
          if (until - first <= 3) {
            const moved = best.order.slice(first, until);
            const rest = [...best.order.slice(0, first), ...best.order.slice(until)];
            for (let at = 0; at <= rest.length; at++) tries.push([...rest.slice(0, at), ...moved, ...rest.slice(at)]);
          }
          for (const order of tries) {
            const next = candidate(order);
            if (!isBetter(next, best)) continue;
            best = next;
            found = true;
          }
        }
      }
    }
    return best;
  }

  // As the rows stand, if that can be kept: where nothing is better, nothing is moved.
  const asListed = candidate(all);
  let best = putAllIn([], drawnOrder(all));
  if (!isBetter(best, asListed) && asListed.endMs < never) best = asListed;
  for (let start = 1; start <= STARTS; start++) {
    let current = start === 1 ? best : putAllIn([], drawnOrder(all));
    const from = spent;
    const budget = Math.max(1, (steps * start) / STARTS - from);
    while (spent < from + budget) {
      const next = neighbour(current);
      const slackMs = LENIENCE * (1 - (spent - from) / budget) * (best.endMs - run.leaveMs);
      if (
        next.worth > current.worth ||
        (next.worth === current.worth && next.endMs <= current.endMs + random() * slackMs)
      )
        if (next.endMs < never) current = next;
      if (isBetter(next, best)) best = next;
      if (all.length < 2) break;
    }
    best = polished(best);
  }
  return { order: best.order, endMs: best.endMs, travelMs: best.travelMs, isProved: false };
}

function isBetter(one: Candidate, other: Candidate): boolean {
  if (one.endMs === never) return false;
  return (one.worth - other.worth || other.endMs - one.endMs || other.travelMs - one.travelMs) > 0;
}

function turned(order: readonly number[], from: number, until: number): readonly number[] {
  return [...order.slice(0, from), ...order.slice(from, until).reverse(), ...order.slice(until)];
}
