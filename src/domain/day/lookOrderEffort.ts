import type { OrderEffort } from "../plan/searchedOrder";

/** How long an order is sought, and how widely one as good that is nearer to the order given. */
export interface LookOrderEffort extends OrderEffort {
  readonly nearestWidth: number;
}

/** Days of so many looks are worth the longer search that mostly proves the order best. */
const PROVED_LOOKS = 15;

/** How long the order of so many looks is sought: within about a second on one core of a laptop, whatever their number. */
export function lookOrderEffort(lookCount: number): LookOrderEffort {
  if (lookCount <= PROVED_LOOKS) return { tries: 2000, beginnings: 100_000, seed: 1, nearestWidth: 100 };
  const share = 1 / lookCount;
  return {
    tries: Math.min(30_000, Math.floor(1_000_000 * share)),
    beginnings: Math.floor(400_000 * share),
    seed: 1,
    nearestWidth: 0,
  };
}
