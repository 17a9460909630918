import type { CompletionBound } from "./completionBound";
import { doorLimits } from "./doorLimits";
import { latestLeave } from "./latestLeave";
import { never } from "./never";
import type { Run } from "./run";
import { runEnd } from "./runEnd";
import { stateRows } from "./stateRows";
import { visitEnd } from "./visitEnd";

/** How soon, and with how little travel, each set of stops can be met, by the last of them. Sets are bit patterns: bit 0 is stop 1. */
export interface EarliestEnds {
  /** The end of the last visit, Infinity where the set cannot be met so or need not be looked at. */
  readonly endAt: (set: number, last: number) => number;
  /** The least travel until then, in whatever order. */
  readonly travelAt: (set: number, last: number) => number;
  /** What is met at best, how soon the run then ends, and what its travel comes to at least. */
  readonly worth: number;
  readonly endMs: number;
  readonly leastTravelMs: number;
  /** The sets looked at, each after those that it holds. */
  readonly sets: readonly number[];
}

/** What an order found otherwise comes to, or what is hoped for: whatever cannot be as good is not looked at. */
interface Goal {
  readonly worth: number;
  /** Infinity where it is not known whether so much can be met. */
  readonly endMs: number;
  /** Infinity where no order is known that ends then. */
  readonly travelMs: number;
  /** How many stops are met where so much is and no more can be; null where that is not known. */
  readonly toMeet: number | null;
}

/**
 * Forward dynamic programming over sets of stops (Held and Karp 1962), with waiting at doors: of two ways to the same set and last
 * stop, the sooner is never worse, for who comes later cannot leave earlier.
 *
 * A state is dropped once what it can still reach is worth less than the goal, or as much but surely later, or at the same time but
 * surely with more travel; `bound` is on the travel to come, where the goal says how many stops are met. null when there are more
 * states than `stepLimit` allows; a worth of -1 when the goal cannot be reached.
 */
export function earliestEnds(
  run: Run,
  worths: readonly number[],
  goal: Goal,
  bound: CompletionBound | null,
  stepLimit: number,
): EarliestEnds | null {
  const { stopCount, travelMs, visitMs } = run;
  const all = goal.toMeet === stopCount;
  const limits = doorLimits(run, goal.endMs, all);
  const { soonestMs, arriveByMs, mustFollow } = limits;
  const leaveBy = latestLeave(run, limits, goal.toMeet === null);
  const leaveSooner =
    goal.travelMs === never ? leaveBy : latestLeave(run, doorLimits(run, goal.endMs - 1, all), goal.toMeet === null);
  const byUrgency = worths.map((_, index) => index + 1).sort((a, b) => worths[b - 1]! - worths[a - 1]!);
  const rows = stateRows(stopCount);
  const { sets } = rows;
  let steps = 0;
  let { worth: bestWorth, endMs: bestEnd } = goal;
  let leastTravelMs = never;
  let reached = -1;

  // Each set stands before the larger ones that it leads to.
  for (let row = 0; row < sets.length; row++) {
    const set = sets[row]!;
    const left = byUrgency.filter((stop) => !(set & (1 << (stop - 1))));
    const metCount = stopCount - left.length;
    let worth = 0;
    for (let stop = 1; stop <= stopCount; stop++) if (set & (1 << (stop - 1))) worth += worths[stop - 1]!;
    const prices = bound === null ? 0 : left.reduce((sum, stop) => sum + bound.priceMs[stop]!, 0);
    const visits = left.reduce((sum, stop) => sum + visitMs[stop]!, 0);

    /** Whether a state may lead to what is as good as the goal. */
    function isWorthwhile(last: number, leaveMs: number, travelled: number): boolean {
      // What can still be met, and at least how many of it must be.
      let hoped = worth;
      let canMeet = 0;
      let toCome = 0;
      for (const stop of left) {
        if (leaveMs + soonestMs[last]![stop]! > arriveByMs[stop]!) {
          if (all) return false;
          continue;
        }
        canMeet++;
        hoped += worths[stop - 1]!;
        if (toCome === 0 && hoped >= bestWorth) toCome = canMeet;
      }
      if (toCome === 0) return false;
      if (goal.toMeet !== null) toCome = goal.toMeet - metCount;
      if (leaveMs > leaveBy(last, toCome, set)) return false;
      if (bound === null) return true;
      // Prices are no whole milliseconds: less than one is left for rounding.
      const comingMs = prices + bound.leastMs(last, toCome, set) - 0.5;
      const soonestEnd = all ? leaveMs + visits + comingMs : leaveMs;
      if (soonestEnd > bestEnd) return false;
      const isAsGood = travelled + comingMs <= goal.travelMs || bestEnd < goal.endMs;
      return isAsGood || (leaveMs <= leaveSooner(last, toCome, set) && soonestEnd <= bestEnd - 1);
    }

    for (let last = metCount === 0 ? 0 : 1; last <= (metCount === 0 ? 0 : stopCount); last++) {
      if (last > 0 && !(set & (1 << (last - 1)))) continue;
      const leaveMs = last === 0 ? run.leaveMs : rows.endAt(row, last);
      if (leaveMs === never) continue;
      const travelled = last === 0 ? 0 : rows.travelAt(row, last);
      const endMs = runEnd(run, last, leaveMs);
      if (endMs < never && (worth > bestWorth || (worth === bestWorth && endMs <= bestEnd))) {
        if (worth > bestWorth || endMs < bestEnd) leastTravelMs = never;
        bestWorth = worth;
        bestEnd = endMs;
        reached = worth;
        leastTravelMs = Math.min(leastTravelMs, travelled + (run.returns && last > 0 ? travelMs[last]![0]! : 0));
      }
      steps += left.length;
      if (steps > stepLimit) return null;
      if (!isWorthwhile(last, leaveMs, travelled)) continue;
      for (const stop of left) {
        if (mustFollow[stop]! & ~set) continue;
        const legMs = travelMs[last]![stop]!;
        const over = visitEnd(run, stop, leaveMs + legMs);
        if (over < never) rows.tell(set | (1 << (stop - 1)), stop, over, travelled + legMs);
      }
    }
  }
  const at = (of: (row: number, last: number) => number) => (set: number, last: number) => {
    const row = rows.rowOf(set);
    return row === 0 ? never : of(row, last);
  };
  return {
    endAt: at(rows.endAt),
    travelAt: at(rows.travelAt),
    worth: reached,
    endMs: bestEnd,
    leastTravelMs,
    sets,
  };
}
