import { firstBound } from "./firstBound";
import { shiftedOrder } from "./shiftedOrder";
import { layeredOrder } from "./layeredOrder";
import type { OrderSteps } from "./orderSteps";
import type { OrderTask } from "./orderTask";

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
}

const FIRST_WIDTH = 10;
const WIDENING = 10;
/** Up to so many things the bound is taken from each of them put first. */
const MOST_FIRSTS = 200;
/** By how much a pass is trusted to need fewer beginnings than the one before. */
const MOST_HOPED_FOR = 4;

/**
 * The best order found from the one given, which keeps the rules; the result never costs more.
 *
 * A narrow layered search finds an order and a bound, shifting blocks improves on it, and layered searches that grow
 * wider and wider try to prove it best, until they do or the effort is spent.
 */
export function searchedOrder<State>(
  task: OrderTask,
  steps: OrderSteps<State>,
  start: readonly number[],
  effort: OrderEffort,
): SearchedOrder {
  if (task.count === 0) return { order: start, cost: task.cost(start), bound: task.cost(start) };
  let best: SearchedOrder = {
    order: start,
    cost: task.cost(start),
    bound: Math.max(effort.knownBound ?? -Infinity, steps.bound(steps.open)),
  };
  // Beside the search it is soon found, but not where things are so many that hardly any order is tried.
  if (task.count <= MOST_FIRSTS) best = { ...best, bound: Math.max(best.bound, firstBound(task, steps)) };
  let beginningsLeft = effort.beginnings;
  let beginningsAWidth = (task.count * (task.count + 1)) / 2;

  function search(width: number): void {
    const { order, bound, beginnings } = layeredOrder(task, steps, best.cost, width);
    beginningsLeft -= beginnings;
    // Mostly far fewer than there could be, and about as many for each in the next pass.
    beginningsAWidth = Math.max(beginnings / width, beginningsAWidth / MOST_HOPED_FOR);
    if (order !== null) best = { ...best, order, cost: task.cost(order) };
    best = { ...best, bound: Math.max(best.bound, bound) };
  }

  const widest = (): number => Math.floor(beginningsLeft / beginningsAWidth);
  if (best.bound < best.cost && widest() >= FIRST_WIDTH) search(FIRST_WIDTH);
  if (best.bound < best.cost) {
    const { tries, seed } = effort;
    best = { ...best, ...shiftedOrder(task, best.order, { tries, seed, target: best.bound }) };
  }
  for (let width = FIRST_WIDTH * WIDENING; best.bound < best.cost && widest() > FIRST_WIDTH; width *= WIDENING) {
    // What is left is spent at once when it would not do for two more passes.
    search(widest() < width * WIDENING ? widest() : width);
  }
  return best;
}
