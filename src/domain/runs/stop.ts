import type { OpeningSpan } from "../loans/openingSpan";
import type { Problem } from "../problem";
import type { Place } from "./place";

/** One row of a run: where to go, how long it takes there and when the door is open. */
export interface Stop {
  /** What it is called; where it has no name the problem stands in its cell, and it is planned all the same. */
  readonly name: string | Problem;
  /** What a sentence calls it. */
  readonly said: string;
  readonly minutes: number;
  /** When a visit may be there, from its beginning to its end; null is at any time. */
  readonly opening: readonly OpeningSpan[] | null;
  /** What is due sooner is met first where not all can be; null is due last. Only the order of these numbers counts. */
  readonly due: number | null;
  readonly place: Place | null;
  /** The cell that keeps it from being planned, or null. */
  readonly problem: Problem | null;
}
