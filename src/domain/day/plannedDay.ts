import type { Look } from "./look";
import type { Wait } from "./wait";

/** One thing done with a look. Times are fractions of a day, from its beginning up to but not with its end. */
export interface PlannedStep {
  readonly kind: "hair and make-up" | "change" | "shot";
  readonly from: number;
  readonly until: number;
  /** Which of the chairs, dressers or cameras does it, from 1. */
  readonly station: number;
  /** What held its beginning back. */
  readonly waitsFor: Wait;
}

/** One look of a plan. */
export interface PlannedLook {
  readonly look: Look;
  /** In the order they are done; preparation of no length is no step, the shot always is one. */
  readonly steps: readonly PlannedStep[];
  /** Start and end of all preparation; both the moment its talents are free where it needs none. */
  readonly changeFrom: number;
  readonly readyBy: number;
  readonly shootFrom: number;
  readonly shootUntil: number;
  /** From ready to the shot. */
  readonly minutesSpare: number;
  /** What held the shot back, traced through the look's own preparation to what held that back. */
  readonly waitsFor: Wait;
}

/** The one meal of a plan. */
export interface PlannedMeal {
  readonly from: number;
  readonly until: number;
  /** The latest it should have begun. */
  readonly due: number;
  /** 0 where it begins in time. */
  readonly minutesLate: number;
}

/** A whole day's plan. */
export interface PlannedDay {
  /** In the order they are shot. */
  readonly looks: readonly PlannedLook[];
  readonly call: number;
  /** The end of the last shot; the call where there is no look. */
  readonly ends: number;
  /** null where no meal is kept, or where the day is over before it is due. */
  readonly meal: PlannedMeal | null;
}
