import type { Run } from "./run";

/** The latest arrival at a stop after which its visit can be over by a time; -Infinity where there is none. */
export function latestArrival(run: Run, stop: number, overByMs: number): number {
  const begin = run.beginMs[stop]!;
  const beginBy = overByMs - run.visitMs[stop]!;
  for (let at = begin.length - 1; at > 0; at -= 2) if (begin[at - 1]! <= beginBy) return Math.min(beginBy, begin[at]!);
  return -Infinity;
}
