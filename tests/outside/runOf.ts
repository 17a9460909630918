import type { Run } from "../../src/domain/runs/run";

const MS_A_MINUTE = 60_000;

/** A published instance as a run: its first place is the start, its figures are minutes, its windows say when one may arrive. */
export function runOf(
  minutes: readonly (readonly number[])[],
  windows: readonly (readonly [number, number])[] = minutes.map(() => [0, Infinity]),
): Run {
  const ms = (value: number): number => Math.round(value * MS_A_MINUTE);
  return {
    stopCount: minutes.length - 1,
    travelMs: minutes.map((row) => row.map(ms)),
    visitMs: minutes.map(() => 0),
    beginMs: windows.map((window) => window.map(ms)),
    rank: minutes.map(() => 0),
    leaveMs: ms(windows[0]![0]),
    backByMs: ms(windows[0]![1]),
    returns: true,
  };
}
