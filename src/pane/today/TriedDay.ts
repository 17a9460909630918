import type { Look } from "../../domain/day/look";

/** A day in an order that is tried, against the order given. */
export interface TriedDay {
  /** In the order tried. */
  readonly looks: readonly Look[];
  /** When each is shot, in the same order; null where the order cannot be kept. Times are fractions of a day. */
  readonly shots: readonly { readonly from: number; readonly until: number }[] | null;
  /** The end of the last shot. */
  readonly ends: number | null;
  /** Minutes from there to wrap, below 0 when over; null where either is not known. */
  readonly minutesSpareAtWrap: number | null;
  /** How much sooner the last shot ends than in the order given, below 0 when later; null where one of them has no plan. */
  readonly minutesSooner: number | null;
  /** Why the order cannot be kept. */
  readonly sentence: string | null;
}
