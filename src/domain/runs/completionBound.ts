import type { Run } from "./run";

/** Bounds from below what is still to come of a run; waiting is left out. */
export interface CompletionBound {
  /** To be added for each stop that is still to be met. */
  readonly priceMs: readonly number[];
  /** The least from a place with so many stops to come, without their prices. */
  readonly leastMs: (place: number, stopsToCome: number) => number;
}

interface Walks {
  /** By stops to come and place: the least, where it goes next, and the same for the least that goes elsewhere. */
  readonly leastMs: Float64Array;
  readonly next: Int32Array;
  readonly otherMs: Float64Array;
  readonly otherNext: Int32Array;
}

const ROUNDS = 80;

/**
 * A bound on the time that some stops take from any place, by walks that may meet a stop again but not turn straight back, with a
 * price on each stop that rises while walks pass it by and falls while they meet it too often: the state-space relaxation of
 * Christofides, Mingozzi and Toth (1981) with Lagrange multipliers by subgradient steps.
 *
 * `targetMs` is what travel and visits come to in an order found otherwise; it only sets how far a price moves at a time.
 */
export function completionBound(run: Run, targetMs: number): CompletionBound {
  const { stopCount } = run;
  const size = stopCount + 1;
  let priceMs: readonly number[] = Array<number>(size).fill(0);
  let walks = shortestWalks(run, priceMs);
  let best = { boundMs: -Infinity, priceMs, walks };
  for (let round = 0; round < ROUNDS; round++) {
    const boundMs = priceMs.reduce((sum, price) => sum + price, walks.leastMs[stopCount * size]!);
    if (boundMs > best.boundMs) best = { boundMs, priceMs, walks };
    const met = timesMet(walks, stopCount);
    const off = met.reduce((sum, times, stop) => sum + (stop === 0 ? 0 : (1 - times) ** 2), 0);
    const stepMs = ((2 - (1.9 * round) / ROUNDS) * (targetMs - boundMs)) / off;
    if (!(stepMs > 0 && stepMs < Infinity)) break;
    priceMs = priceMs.map((price, stop) => (stop === 0 ? 0 : price + stepMs * (1 - met[stop]!)));
    walks = shortestWalks(run, priceMs);
  }
  const { leastMs } = best.walks;
  return { priceMs: best.priceMs, leastMs: (place, stopsToCome) => leastMs[stopsToCome * size + place]! };
}

function shortestWalks({ stopCount, travelMs, visitMs, returns }: Run, priceMs: readonly number[]): Walks {
  const size = stopCount + 1;
  const leastMs = new Float64Array(size * size).fill(Infinity);
  const otherMs = new Float64Array(size * size).fill(Infinity);
  const next = new Int32Array(size * size);
  const otherNext = new Int32Array(size * size);
  for (let place = 0; place < size; place++) leastMs[place] = returns ? travelMs[place]![0]! : 0;
  for (let cell = size; cell < size * size; cell++) {
    const place = cell % size;
    for (let stop = 1; stop < size; stop++) {
      if (stop === place) continue;
      const onward = cell - size - place + stop;
      const turnsBack = onward >= size && next[onward] === place;
      const walkMs =
        travelMs[place]![stop]! + visitMs[stop]! - priceMs[stop]! + (turnsBack ? otherMs : leastMs)[onward]!;
      if (walkMs < leastMs[cell]!) {
        otherMs[cell] = leastMs[cell]!;
        otherNext[cell] = next[cell]!;
        leastMs[cell] = walkMs;
        next[cell] = stop;
      } else if (walkMs < otherMs[cell]!) {
        otherMs[cell] = walkMs;
        otherNext[cell] = stop;
      }
    }
  }
  return { leastMs, next, otherMs, otherNext };
}

/** How often the least walk from the start meets each stop. */
function timesMet({ next, otherNext }: Walks, stopCount: number): readonly number[] {
  const size = stopCount + 1;
  const times = Array<number>(size).fill(0);
  for (let toCome = stopCount, place = 0, before = -1; toCome > 0; toCome--) {
    const cell = toCome * size + place;
    const stop = next[cell] === before ? otherNext[cell]! : next[cell]!;
    times[stop]!++;
    before = place;
    place = stop;
  }
  return times;
}
