/** What an order of `count` things must keep; things and places are numbered from 0. */
export interface OrderRules {
  readonly count: number;
  /** By thing: those that must come before it, somewhere. Never in a circle. */
  readonly before: readonly (readonly number[])[];
  /** By thing: the one place it may have, or -1. */
  readonly placeOf: readonly number[];
}
