import type { MealSpan } from "./daySchedule";
import type { OrderTrail } from "./orderTrail";

/**
 * A day of which some looks are placed, in the search for an order: what is remembered of it.
 *
 * When everything is free is timed again when it is gone on from, since a search remembers far more than it goes on from.
 */
export interface PartDay {
  readonly trail: OrderTrail | null;
  readonly left: readonly number[];
  /** null while it is still open where the meal falls, or whether there is one. */
  readonly meal: MealSpan | null;
  /** Whether the first look has a step that ends in time for the meal: then the meal falls in time, whatever follows. */
  readonly mealInTime: boolean;
  /** The latest end of a step that is in time for the meal, -Infinity where none is. */
  readonly lastEndInTime: number;
  /** Whether every step so far ends in time for the meal. */
  readonly allInTime: boolean;
  readonly bound: number;
  /** The end of the last shot so far. */
  readonly endSeconds: number;
  readonly key: string;
  readonly standing: readonly number[] | null;
}
