import type { Run } from "./run";
import { runEnd } from "./runEnd";
import { visitEnd } from "./visitEnd";

/** What an order comes to: its end (Infinity where a door is closed) and its travel. */
export function orderCost(run: Run, order: readonly number[]): { readonly endMs: number; readonly travelMs: number } {
  let leaveMs = run.leaveMs;
  let travelMs = 0;
  let last = 0;
  for (const stop of order) {
    const leg = run.travelMs[last]![stop]!;
    travelMs += leg;
    leaveMs = visitEnd(run, stop, leaveMs + leg);
    last = stop;
  }
  if (run.returns && last !== 0) travelMs += run.travelMs[last]![0]!;
  return { endMs: runEnd(run, last, leaveMs), travelMs };
}
