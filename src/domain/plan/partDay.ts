import type { MealSpan } from "./daySchedule";
import type { DayState } from "./dayState";
import type { OrderTrail } from "./orderTrail";

/** A day of which some looks are placed, in the search for an order. */
export interface PartDay {
  readonly trail: OrderTrail | null;
  readonly left: readonly number[];
  /** Around the meal once it is placed, else as if there were none. */
  readonly state: DayState;
  /** The same looks with arrivals eased, while that matters; see `dayOrderSteps`. */
  readonly easedState: DayState | null;
  /** null while it is still open where the meal falls, or whether there is one. */
  readonly meal: MealSpan | null;
  /** Whether the first look has a step that ends in time for the meal: then the meal falls in time, whatever follows. */
  mealInTime: boolean;
  /** The latest end of a step that is in time for the meal, -Infinity where none is. */
  lastEndInTime: number;
  /** Whether every step so far ends in time for the meal. */
  allInTime: boolean;
  readonly bound: number;
}
