import { layeredOrder } from "./layeredOrder";
import { nearerSteps } from "./nearerSteps";
import type { OrderSteps } from "./orderSteps";
import type { OrderTask } from "./orderTask";
import { orderTowardsGiven } from "./orderTowardsGiven";
import type { Stepwise } from "./stepwise";
import { turnedPairs } from "./turnedPairs";

/**
 * Of the orders that cost no more than this one, one near to the things as they are numbered: with few pairs turned.
 *
 * Single things are moved back first; a layered search of that width then looks for a nearer one still, and where it
 * drops nothing there is none.
 */
export function* nearestOrder<State>(
  task: OrderTask,
  steps: OrderSteps<State>,
  order: readonly number[],
  tries: number,
  width: number,
): Stepwise<readonly number[]> {
  const moved = yield* orderTowardsGiven(task, order, tries);
  const turned = turnedPairs(moved);
  if (turned === 0 || width < 1) return moved;
  // Costs are whole seconds, so what costs less than one more costs no more.
  const nearer = nearerSteps(steps, task.cost(moved) + 1);
  return (yield* layeredOrder(task, nearer, turned, width)).order ?? moved;
}
