import { completionBound } from "./completionBound";
import { earliestEnds } from "./earliestEnds";
import { leastTravelOrder } from "./leastTravelOrder";
import { orderCost } from "./orderCost";
import type { Run } from "./run";
import type { RunOrder } from "./runOrder";
import { stopWorths } from "./stopWorths";

/** About a third of a second of one core. */
const MOST_STEPS = 8_000_000;

/**
 * The order that meets the most and the most urgent, ends soonest and travels least, proved; null where that would take too long.
 *
 * `found` is an order found otherwise, which bounds the search; it is the answer where the search takes too long but the bound shows that
 * nothing ends sooner or travels less. At most 20 stops.
 */
export function exactOrder(run: Run, found: RunOrder): RunOrder | null {
  const worths = stopWorths(run.rank.slice(1));
  const worthMet = found.order.reduce((sum, stop) => sum + worths[stop - 1]!, 0);
  const worthOfAll = worths.reduce((sum, worth) => sum + worth, 0);
  // Whether all can be met is soon told: where one stop is out of reach, the state is dropped.
  const whole = worthMet < worthOfAll ? { worth: worthOfAll, endMs: Infinity } : null;
  const bound = completionBound(run, found.travelMs + found.order.reduce((sum, stop) => sum + run.visitMs[stop]!, 0));
  let ends = whole === null ? null : earliestEnds(run, worths, whole, bound, MOST_STEPS);
  if (ends === null || ends.worth < 0)
    ends = earliestEnds(run, worths, { worth: worthMet, endMs: found.endMs }, bound, MOST_STEPS);
  if (ends === null || ends.worth < 0) {
    const leastMs = bound.priceMs.reduce((sum, price) => sum + price, run.leaveMs + bound.leastMs(0, run.stopCount));
    return whole === null && found.endMs < leastMs + 0.5 ? { ...found, isProved: true } : null;
  }
  const { order, isSure } = leastTravelOrder(run, ends);
  return { order, ...orderCost(run, order), isProved: isSure };
}
