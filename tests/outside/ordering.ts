import { reducedCosts } from "./reducedCosts";
import type { OrderSteps } from "../../src/domain/plan/orderSteps";
import type { OrderTask } from "../../src/domain/plan/orderTask";

/** An ordering whose cost is what it takes to go from each thing to the next: from the first to the last, with some before others. */
export interface Ordering {
  readonly costs: readonly (readonly number[])[];
  readonly before: readonly (readonly number[])[];
}

/** A published ordering with precedences: -1 from one thing to another says that the other comes before it. */
export function orderingWithPrecedences(costs: readonly (readonly number[])[]): Ordering {
  return { costs, before: costs.map((row) => row.flatMap((cost, other) => (cost === -1 ? [other] : []))) };
}

/** A published asymmetric tour as an ordering from a fixed first to a copy of it as last. */
export function orderingOfTour(costs: readonly (readonly number[])[]): Ordering {
  const open = [...costs.map((row) => [...row, row[0]!]), costs.map(() => 0).concat(0)];
  return { costs: open, before: open.map(() => []) };
}

/** The ordering as a task of the search. */
export function taskOf({ costs, before }: Ordering): OrderTask {
  const last = costs.length - 1;
  return {
    count: costs.length,
    before,
    placeOf: costs.map((_, thing) => (thing === 0 || thing === last ? thing : -1)),
    cost(order) {
      let sum = 0;
      for (let at = 1; at < order.length; at++) sum += costs[order[at - 1]!]![order[at]!]!;
      return sum;
    },
  };
}

interface Path {
  readonly at: number;
  readonly cost: number;
  readonly bound: number;
}

/**
 * How it is built, its bound from what is left of the costs once a best assignment's prices are taken off: the path so
 * far, and the least there is to come to each thing that is left.
 */
export function stepsOf({ costs }: Ordering): OrderSteps<Path> {
  // Every thing but the last is left once, every thing but the first is come to once.
  const ways = costs
    .slice(0, -1)
    .map((row, from) => row.slice(1).map((cost, to) => (cost < 0 || from === to + 1 ? Infinity : cost)));
  const { costs: reduced, taken } = reducedCosts(ways);
  return {
    open: { at: -1, cost: taken, bound: taken },
    next({ at, cost }, { thing }, left, limit) {
      const spent = at < 0 ? cost : cost + reduced[at]![thing - 1]!;
      let bound = spent;
      for (const to of left) {
        let least = reduced[thing]![to - 1]!;
        for (const from of left) {
          if (from < reduced.length && reduced[from]![to - 1]! < least) least = reduced[from]![to - 1]!;
        }
        bound += least;
        if (bound >= limit) return null;
      }
      return { at: thing, cost: spent, bound };
    },
    bound: ({ bound }) => bound,
    costSoFar: ({ cost }) => cost,
    key: ({ at }) => String(at),
    standing: ({ cost }) => [cost],
    needsEqual: () => false,
  };
}
