import { never } from "./never";
import type { Run } from "./run";

/** When the visit at a stop is over for one who arrives at a time and waits for the door to open; Infinity where it is too late. */
export function visitEnd(run: Pick<Run, "beginMs" | "visitMs">, stop: number, arriveMs: number): number {
  const begin = run.beginMs[stop]!;
  for (let at = 1; at < begin.length; at += 2) {
    const fromMs = begin[at - 1]!;
    if (arriveMs <= begin[at]!) return (arriveMs < fromMs ? fromMs : arriveMs) + run.visitMs[stop]!;
  }
  return never;
}
