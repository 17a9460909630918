import type { PlannedDay } from "./plannedDay";

/** A day in the best order found, and what is known of it. Times are fractions of a day. */
export interface OrderedDay {
  readonly plan: PlannedDay;
  /** How much sooner the last shot ends than in the order given; null where that order does not keep After and Fixed. */
  readonly minutesSaved: number | null;
  /** No order that keeps After and Fixed ends sooner than this. */
  readonly endsNotBefore: number;
  /** Whether no order can end sooner than this one. */
  readonly isProvedBest: boolean;
}
