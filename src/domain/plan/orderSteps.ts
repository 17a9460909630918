import type { OrderTrail } from "./orderTrail";

/** How orders of one kind of work are built thing after thing, and what can be said of them on the way. */
export interface OrderSteps<State> {
  /** Before the first. */
  readonly open: State;
  /**
   * After one more, the last of the trail, with what is then left in rising order; null where no order that goes on
   * from there costs less than the limit. The state it came from stays as it was.
   */
  readonly next: (state: State, trail: OrderTrail, left: readonly number[], limit: number) => State | null;
  /** What every order that goes on from here costs at least; with nothing left exactly what it costs. */
  readonly bound: (state: State) => number;
  /** What the order costs so far; of equal bounds the cheaper so far is the more promising. */
  readonly costSoFar: (state: State) => number;
  /** States with the same things left and the same key are comparable by their standings. */
  readonly key: (state: State) => string;
  /**
   * What decides about all that follows, every number the better the smaller: of two comparable states, the one with no
   * number larger never costs more, however the things left are ordered. null where none can be compared.
   */
  readonly standing: (state: State) => readonly number[] | null;
  /** Whether only standings that are equal may be compared. */
  readonly needsEqual: (state: State) => boolean;
}
