/**
 * How much of each resource is free from each moment on: `free[i * capacities.length + r]` from `times[i]` up to the next.
 *
 * The first time is 0, the last stretch has no end, and all of everything is free in it.
 */
export interface FreeProfile {
  readonly times: number[];
  readonly free: number[];
}
