import { latestArrival } from "./latestArrival";
import type { Run } from "./run";
import { shortestTravel } from "./shortestTravel";
import { visitEnd } from "./visitEnd";

/** What the doors leave of a run that is to be over by a time. */
export interface DoorLimits {
  /** When the run is over at the latest. */
  readonly overByMs: number;
  /** The least time from place to place, by way of other stops where that is shorter. */
  readonly soonestMs: readonly (readonly number[])[];
  /** The soonest and the latest arrival at each stop; the latest is -Infinity where it cannot be met. */
  readonly arriveFromMs: readonly number[];
  readonly arriveByMs: readonly number[];
  /** Where all are to be met, the stops that each must come after, as sets: bit 0 is stop 1. Else none. */
  readonly mustFollow: readonly number[];
}

/**
 * Narrows the hours of each stop to what the run as a whole leaves of them, and where `all` are to be met to what those leave that must come
 * before it or after it: the preprocessing of Desrochers, Desrosiers and Solomon (1992) and of Ascheuer, Fischetti and Grötschel (2001).
 */
export function doorLimits(run: Run, endByMs: number, all: boolean): DoorLimits {
  const overByMs = run.returns ? Math.min(endByMs, run.backByMs) : endByMs;
  const soonestMs = shortestTravel(run);
  const arriveByMs = run.beginMs.map((_, stop) =>
    latestArrival(run, stop, run.returns ? overByMs - soonestMs[stop]![0]! : overByMs),
  );
  const arriveFromMs = soonestMs[0]!.map((wayMs) => run.leaveMs + wayMs);
  const mustFollow = run.beginMs.map(() => 0);
  let isNew = all;
  for (let round = 0; isNew && round < run.stopCount; round++) {
    isNew = false;
    for (let stop = 1; stop <= run.stopCount; stop++) {
      for (let other = 1; other <= run.stopCount; other++) {
        const overMs = visitEnd(run, stop, arriveFromMs[stop]!);
        if (other === stop || overMs + soonestMs[stop]![other]! <= arriveByMs[other]!) continue;
        mustFollow[stop]! |= 1 << (other - 1);
        const wayMs = soonestMs[other]![stop]!;
        const fromMs = visitEnd(run, other, arriveFromMs[other]!) + wayMs;
        const byMs = latestArrival(run, other, arriveByMs[stop]! - wayMs);
        isNew ||= fromMs > arriveFromMs[stop]! || byMs < arriveByMs[other]!;
        arriveFromMs[stop] = Math.max(arriveFromMs[stop]!, fromMs);
        arriveByMs[other] = Math.min(arriveByMs[other]!, byMs);
      }
      // Not all can be met: no need to narrow on.
      if (arriveFromMs[stop]! > arriveByMs[stop]!) return { overByMs, soonestMs, arriveFromMs, arriveByMs, mustFollow };
    }
  }
  return { overByMs, soonestMs, arriveFromMs, arriveByMs, mustFollow };
}
