import { never } from "./never";
import type { Run } from "./run";

/** When a run is over whose last visit (0: none) ends at a time; Infinity where the start is reached too late. */
export function runEnd(run: Run, last: number, leaveMs: number): number {
  if (!run.returns) return leaveMs;
  const backMs = leaveMs + (last === 0 ? 0 : run.travelMs[last]![0]!);
  return backMs <= run.backByMs ? backMs : never;
}
