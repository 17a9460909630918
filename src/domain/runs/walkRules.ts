import type { Run } from "./run";

/** Which places a walk may come to from which, and what it remembers on the way. Sets are bit patterns: bit 0 is stop 1. */
export interface WalkRules {
  /** The stops each place remembers; the bit of a stop is its place in this list. */
  readonly nearOf: readonly (readonly number[])[];
  /** From place to place: of each set remembered at the one, what the other remembers of it, and of the one itself. */
  readonly carried: readonly (readonly Int32Array[])[];
  /** By place: of each set of the first ten stops, and of the next ten, what it remembers. */
  readonly nearOfLow: readonly Int32Array[];
  readonly nearOfHigh: readonly Int32Array[];
  /** From place to place, whether one may be right before the other. */
  readonly mayFollow: readonly (readonly boolean[])[];
  /** How many stops must come before each, and after each. */
  readonly countBefore: readonly number[];
  readonly countAfter: readonly number[];
}

const HALF = 10;

/**
 * The rules of walks in which each stop remembers so many of those near it. `after` are the stops that each must come after: what must come
 * between two keeps them from following each other.
 */
export function walkRules({ travelMs, stopCount }: Run, remembered: number, after: readonly number[]): WalkRules {
  const places = travelMs.map((_, place) => place);
  const width = Math.min(remembered, Math.max(0, stopCount - 1));
  const nearOf = places.map((place) => {
    const around = (stop: number): number => travelMs[place]![stop]! + travelMs[stop]![place]!;
    const others = places.filter((stop) => stop !== 0 && stop !== place);
    return others.sort((a, b) => around(a) - around(b) || a - b).slice(0, width);
  });
  const bitIn = (near: readonly number[], stop: number): number => (near.includes(stop) ? 1 << near.indexOf(stop) : 0);
  const half = (near: readonly number[], from: number): Int32Array =>
    unions(
      Array.from({ length: HALF }, (_, index) => bitIn(near, from + index + 1)),
      0,
    );
  const comesAfter = (stop: number, other: number): boolean => other > 0 && (after[stop]! & (1 << (other - 1))) !== 0;
  return {
    nearOf,
    carried: nearOf.map((near, from) =>
      nearOf.map((nearTo) =>
        unions(
          near.map((stop) => bitIn(nearTo, stop)),
          bitIn(nearTo, from),
        ),
      ),
    ),
    nearOfLow: nearOf.map((near) => half(near, 0)),
    nearOfHigh: nearOf.map((near) => half(near, HALF)),
    mayFollow: places.map((place) =>
      places.map(
        (next) =>
          !comesAfter(place, next) &&
          !places.some((via) => comesAfter(next, via) && (place === 0 || comesAfter(via, place))),
      ),
    ),
    countBefore: places.map((place) => places.filter((other) => comesAfter(place, other)).length),
    countAfter: places.map((place) => places.filter((other) => comesAfter(other, place)).length),
  };
}

/** For each set of bits the union of what each of them stands for, and of what always is in it. */
function unions(bits: readonly number[], always: number): Int32Array {
  const out = new Int32Array(2 ** bits.length).fill(always);
  for (let set = 1; set < out.length; set++) {
    const top = 31 - Math.clz32(set);
    out[set] = out[set ^ (1 << top)]! | bits[top]!;
  }
  return out;
}
