import type { OrderSteps } from "./orderSteps";

/** A state of the steps it was made from, and how many pairs of things stand the other way about than they are numbered. */
export interface NearerState<State> {
  readonly state: State;
  readonly pairsTurned: number;
}

/** The same orders as `steps` builds, those only that cost less than `costLimit`, and what they cost here is the pairs they turn. */
export function nearerSteps<State>(steps: OrderSteps<State>, costLimit: number): OrderSteps<NearerState<State>> {
  return {
    open: { state: steps.open, pairsTurned: 0 },
    next(before, trail, left, limit) {
      const pairsTurned = before.pairsTurned + left.filter((other) => other < trail.thing).length;
      if (pairsTurned >= limit) return null;
      const state = steps.next(before.state, trail, left, costLimit);
      return state && { state, pairsTurned };
    },
    bound: ({ pairsTurned }) => pairsTurned,
    costSoFar: ({ state }) => steps.costSoFar(state),
    key: ({ state }) => steps.key(state),
    standing({ state, pairsTurned }) {
      const standing = steps.standing(state);
      return standing && [...standing, pairsTurned];
    },
    needsEqual: ({ state }) => steps.needsEqual(state),
  };
}
