import { firstBound } from "./firstBound";
import { shiftedOrder } from "./shiftedOrder";
import { layeredOrder } from "./layeredOrder";
import type { OrderSteps } from "./orderSteps";
import type { OrderTask } from "./orderTask";
import type { Stepwise } from "./stepwise";

/** How much to do, counted and never timed, so that the same work gives the same order everywhere. */
export interface OrderEffort {
  /** Orders costed while improving. */
  readonly tries: number;
  /** Beginnings of orders that the layered search may look at, over all its passes. */
  readonly beginnings: number;
  readonly seed: number;
  /** What no order costs less than, where that is known already. */
  readonly knownBound?: number;
}

/** The best order found, and what is known of it. */
export interface SearchedOrder {
  readonly order: readonly number[];
  readonly cost: number;
  /** No order that keeps the rules costs less; where it is the cost itself, the order is proved best. */
  readonly bound: number;
  /** How many beginnings were looked at. */
  readonly beginnings: number;
}

const FIRST_WIDTH = 10;
/** With so many narrow searches to spend, the most of it is kept for a wide one. */
const WORTH_TWO = 4;
/** Up to so many things the bound is taken from each of them put first. */
const MOST_FIRSTS = 200;

/**
 * The best order found from the one given, which keeps the rules; the result never costs more.
 *
 * A narrow layered search finds an order and a bound, shifting blocks improves on it, and a layered search as wide as the
 * effort that is left allows tries to prove it best. Where the effort is small for so many things, one of them has it all.
 */
export function* searchedOrder<State>(
  task: OrderTask,
  steps: OrderSteps<State>,
  start: readonly number[],
  effort: OrderEffort,
): Stepwise<SearchedOrder> {
  if (task.count === 0) return { order: start, cost: task.cost(start), bound: task.cost(start), beginnings: 0 };
  let best = {
    order: start,
    cost: task.cost(start),
    bound: Math.max(effort.knownBound ?? -Infinity, steps.bound(steps.open)),
  };
  // Beside the search it is soon found, but not where things are so many that hardly any order is tried.
  if (task.count <= MOST_FIRSTS) best = { ...best, bound: Math.max(best.bound, firstBound(task, steps)) };
  let beginningsLeft = effort.beginnings;

  function* search(width: number, mostBeginnings: number): Stepwise<void> {
    const { order, bound, beginnings } = yield* layeredOrder(task, steps, best.cost, width, mostBeginnings);
    beginningsLeft -= beginnings;
    if (order !== null) best = { ...best, order, cost: task.cost(order) };
    best = { ...best, bound: Math.max(best.bound, bound) };
  }

  // What a narrow search can come to, if every beginning in it goes on to all the others.
  const narrow = (FIRST_WIDTH * task.count * (task.count + 1)) / 2;
  const isWorthTwo = effort.beginnings >= narrow * WORTH_TWO;
  if (best.bound < best.cost && beginningsLeft >= narrow)
    yield* search(isWorthTwo ? FIRST_WIDTH : Infinity, beginningsLeft);
  if (best.bound < best.cost) {
    const { tries, seed } = effort;
    best = { ...best, ...(yield* shiftedOrder(task, best.order, { tries, seed, target: best.bound })) };
  }
  if (best.bound < best.cost && isWorthTwo) yield* search(Infinity, beginningsLeft);
  return { ...best, beginnings: effort.beginnings - beginningsLeft };
}
