import type { Crew } from "./crew";
import type { Look } from "./look";

/** Minutes of change from one look to another, by the keys of both; a pair that is missing counts the look's own. */
export type LookChanges = ReadonlyMap<string, ReadonlyMap<string, number>>;

/** Everything a day's plan is made from. */
export interface Day {
  /** In the order of the sheet. */
  readonly looks: readonly Look[];
  /** Fraction of a day. */
  readonly call: number;
  readonly crew: Crew;
  readonly changes: LookChanges;
}
