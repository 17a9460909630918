import { completionBound } from "./completionBound";
import { doorLimits } from "./doorLimits";
import { type EarliestEnds, earliestEnds } from "./earliestEnds";
import { firstByRow } from "./firstByRow";
import { leastTravelOrder } from "./leastTravelOrder";
import { never } from "./never";
import { orderCost } from "./orderCost";
import type { Run } from "./run";
import type { RunOrder } from "./runOrder";
import { stopWorths } from "./stopWorths";

/** About three seconds of one core. */
const MOST_STEPS = 50_000_000;
const MOST_TRIES = 200_000;
const MOST_WAYS = 10_000_000;

/**
 * The order that meets the most and the most urgent, ends soonest and travels least, proved; null where that would take too long.
 *
 * `found` is an order found otherwise, which bounds the search; it is the answer where the search takes too long but the bounds show that
 * nothing ends sooner or travels less. At most 20 stops.
 */
export function exactOrder(run: Run, found: RunOrder): RunOrder | null {
  const { stopCount } = run;
  const worths = stopWorths(run.rank.slice(1));
  const met = found.order.reduce((sum, stop) => sum + worths[stop - 1]!, 0);
  const all = worths.reduce((sum, worth) => sum + worth, 0);
  const unknown = { endMs: never, travelMs: never };

  let ends: EarliestEnds | null = null;
  if (met < all) {
    // Whether all can be met is soon told: where one stop is out of reach, the state is dropped.
    ends = earliestEnds(run, worths, { worth: all, ...unknown, toMeet: stopCount }, null, MOST_STEPS);
    if (ends === null) return null;
    if (ends.worth < 0)
      ends = earliestEnds(run, worths, { worth: met + 1, ...unknown, toMeet: null }, null, MOST_STEPS);
    if (ends === null) return null;
  }
  if (ends === null || ends.worth < 0) {
    const toMeet = found.order.length;
    const { mustFollow } = doorLimits(run, found.endMs, met === all);
    const isMet = (stop: number): boolean => found.order.includes(stop);
    // Of the stops of one rank either all are met or any may be missed.
    const mayMiss = (stop: number): boolean =>
      run.rank.some((rank, other) => other > 0 && rank === run.rank[stop] && !isMet(other));
    const bound = completionBound(run, { toMeet, mayMiss, mustFollow, targetMs: found.travelMs });
    const leastMs = bound.leastMs(0, toMeet, 0) + bound.priceMs.reduce((sum, price) => sum + price, 0) + 0.5;
    // Where no order travels less, only a sooner end is looked for; among ties the first by row comes easily.
    const isLeast = met === all && found.travelMs < leastMs;
    const goal = { worth: met, endMs: found.endMs, travelMs: isLeast ? -1 : found.travelMs, toMeet };
    ends = earliestEnds(run, worths, goal, bound, MOST_STEPS);
    const visits = run.visitMs.reduce((sum, visit) => sum + visit, 0);
    const isSoonest = ends === null ? found.endMs < run.leaveMs + visits + leastMs : ends.endMs === found.endMs;
    if (isLeast && isSoonest)
      return { ...found, order: firstByRow(run, found, bound, MOST_TRIES) ?? found.order, isProved: true };
    if (ends === null) return null;
  }
  const isFound = ends.worth === met && ends.endMs === found.endMs;
  for (let mostMs = isFound ? found.travelMs : ends.leastTravelMs; ; mostMs += ends.leastTravelMs * 0.03 + 1) {
    const order = leastTravelOrder(run, worths, ends, mostMs, MOST_WAYS);
    if (order === null) return null;
    if (order.length > 0 || ends.worth === 0) return { order, ...orderCost(run, order), isProved: true };
  }
}
