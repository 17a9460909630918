import type { CompletionBound } from "./completionBound";
import { doorLimits } from "./doorLimits";
import { latestLeave } from "./latestLeave";
import { never } from "./never";
import type { Run } from "./run";
import { runEnd } from "./runEnd";
import { visitEnd } from "./visitEnd";

/** What an order comes to. */
interface Ends {
  readonly endMs: number;
  readonly travelMs: number;
}

/**
 * The first order by row that meets every stop, ends by a time and travels no more than so much: rows are tried in turn, as far as a
 * stop's late coming or its travel does not rule them out. null where more than `stepLimit` are to be tried. Quick where there are many such
 * orders, as where all ways are of one length.
 */
export function firstByRow(
  run: Run,
  { endMs, travelMs }: Ends,
  bound: CompletionBound,
  stepLimit: number,
): readonly number[] | null {
  const { stopCount } = run;
  const limits = doorLimits(run, endMs, true);
  const leaveBy = latestLeave(run, limits, false);
  const order: number[] = [];
  let steps = 0;

  function goesOn(set: number, last: number, leaveMs: number, travelled: number, prices: number): boolean {
    if (order.length === stopCount)
      return (
        runEnd(run, last, leaveMs) <= endMs &&
        travelled + (run.returns && last > 0 ? run.travelMs[last]![0]! : 0) <= travelMs
      );
    for (let stop = 1; stop <= stopCount; stop++) {
      if (set & (1 << (stop - 1)) || limits.mustFollow[stop]! & ~set) continue;
      if (++steps > stepLimit) return false;
      const larger = set | (1 << (stop - 1));
      const toCome = stopCount - order.length - 1;
      const now = travelled + run.travelMs[last]![stop]!;
      const left = prices - bound.priceMs[stop]!;
      const over = visitEnd(run, stop, leaveMs + run.travelMs[last]![stop]!);
      if (over === never || over > leaveBy(stop, toCome, larger)) continue;
      // Prices are no whole milliseconds: less than one is left for rounding.
      if (now + left + bound.leastMs(stop, toCome, larger) > travelMs + 0.5) continue;
      order.push(stop);
      if (goesOn(larger, stop, over, now, left)) return true;
      order.pop();
    }
    return false;
  }

  const prices = bound.priceMs.reduce((sum, price) => sum + price, 0);
  return goesOn(0, 0, run.leaveMs, 0, prices) ? order : null;
}
