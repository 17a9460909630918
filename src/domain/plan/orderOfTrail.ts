import type { OrderTrail } from "./orderTrail";

/** The things of a trail, first one first. */
export function orderOfTrail(trail: OrderTrail | null): number[] {
  const order: number[] = [];
  for (let step = trail; step !== null; step = step.before) order.push(step.thing);
  return order.reverse();
}
