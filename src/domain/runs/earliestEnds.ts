import type { CompletionBound } from "./completionBound";
import { never } from "./never";
import type { Run } from "./run";
import { runEnd } from "./runEnd";
import { shortestTravel } from "./shortestTravel";
import { visitEnd } from "./visitEnd";

/** How soon each set of stops can be met, by the last of them. Sets are bit patterns: bit 0 is stop 1. */
export interface EarliestEnds {
  /** The end of the last visit, Infinity where the set cannot be met so or need not be looked at. */
  readonly at: (set: number, last: number) => number;
  /** What is met at best, and how soon the run then ends. */
  readonly worth: number;
  readonly endMs: number;
  /** The sets looked at, each after those that it holds. */
  readonly sets: readonly number[];
  /** The worth of a set. */
  readonly worthOf: (set: number) => number;
}

/** What an order found otherwise comes to: whatever cannot be as good is not looked at. */
interface Goal {
  readonly worth: number;
  readonly endMs: number;
}

/**
 * Forward dynamic programming over sets of stops (Held and Karp 1962), with waiting at doors: of two ways to the same set and last
 * stop, the sooner is never worse, for who comes later cannot leave earlier.
 *
 * A state is dropped once what it can still reach is worth less than the goal, or as much but surely later. null when there are more
 * states than `stepLimit` allows; a worth of -1 when the goal cannot be reached.
 */
export function earliestEnds(
  run: Run,
  worths: readonly number[],
  goal: Goal,
  bound: CompletionBound,
  stepLimit: number,
): EarliestEnds | null {
  const { stopCount, travelMs, visitMs, beginMs } = run;
  const soonest = shortestTravel(run);
  const setCount = 2 ** stopCount;
  const rowOf = new Int32Array(setCount);
  const sets: number[] = [];
  let ends = new Float64Array(64 * stopCount);
  let rowCount = 1;
  let steps = 0;
  let { worth: bestWorth, endMs: bestEnd } = goal;
  let reached = -1;

  const worthOf = (set: number): number => {
    let worth = 0;
    for (let stop = 1; stop <= stopCount; stop++) if (set & (1 << (stop - 1))) worth += worths[stop - 1]!;
    return worth;
  };

  function rowFor(set: number): number {
    if (rowOf[set] !== 0) return rowOf[set]! * stopCount;
    if ((rowCount + 1) * stopCount > ends.length) {
      const larger = new Float64Array(ends.length * 2);
      larger.set(ends);
      ends = larger;
    }
    rowOf[set] = rowCount;
    const row = rowCount * stopCount;
    ends.fill(never, row, row + stopCount);
    rowCount++;
    return row;
  }

  function isWorthwhile(set: number, last: number, leaveMs: number, worth: number): boolean {
    let hoped = worth;
    let toCome = 0;
    let soonestEnd = leaveMs;
    for (let stop = 1; stop <= stopCount; stop++) {
      if (set & (1 << (stop - 1))) continue;
      const begin = beginMs[stop]!;
      const arriveMs = leaveMs + soonest[last]![stop]!;
      if (arriveMs > (begin.at(-1) ?? -1)) continue;
      if (run.returns && arriveMs + visitMs[stop]! + soonest[stop]![0]! > run.backByMs) continue;
      hoped += worths[stop - 1]!;
      toCome++;
      soonestEnd += bound.priceMs[stop]!;
    }
    if (hoped !== bestWorth) return hoped > bestWorth;
    // All that can be reached must then be met. Prices are no whole milliseconds: less than one is left for rounding.
    return soonestEnd + bound.leastMs(last, toCome) < bestEnd + 0.5;
  }

  for (let set = 0; set < setCount; set++) {
    if (set > 0 && rowOf[set] === 0) continue;
    sets.push(set);
    const worth = worthOf(set);
    for (let last = set === 0 ? 0 : 1; last <= (set === 0 ? 0 : stopCount); last++) {
      const leaveMs = set === 0 ? run.leaveMs : ends[rowOf[set]! * stopCount + last - 1]!;
      if (leaveMs === never) continue;
      const endMs = runEnd(run, last, leaveMs);
      if (endMs < never && (worth > bestWorth || (worth === bestWorth && endMs <= bestEnd))) {
        bestWorth = worth;
        bestEnd = endMs;
        reached = worth;
      }
      steps += stopCount;
      if (steps > stepLimit) return null;
      if (!isWorthwhile(set, last, leaveMs, worth)) continue;
      for (let stop = 1; stop <= stopCount; stop++) {
        const bit = 1 << (stop - 1);
        if (set & bit) continue;
        const over = visitEnd(run, stop, leaveMs + travelMs[last]![stop]!);
        if (over === never) continue;
        const cell = rowFor(set | bit) + stop - 1;
        if (over < ends[cell]!) ends[cell] = over;
      }
    }
  }
  return {
    at: (set, last) => (rowOf[set] === 0 ? never : ends[rowOf[set]! * stopCount + last - 1]!),
    worth: reached,
    endMs: bestEnd,
    sets,
    worthOf,
  };
}
