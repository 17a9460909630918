import { clockFraction } from "../../domain/day/clockFraction";
import type { PlannedDay } from "../../domain/day/plannedDay";
import { wrapSeconds } from "../../domain/day/wrapSeconds";

/** The moments of a day that its picture shows across all rows; fractions of a day, past midnight above 1. */
export interface DayMarks {
  readonly from: number;
  readonly until: number;
  readonly wrap: number | null;
  /** null where the clock stands outside the day. */
  readonly now: number | null;
}

/** From call to the end or the wrap, whichever is later. A clock that has passed midnight counts on. */
export function dayMarks(plan: PlannedDay, wrap: number | null, clock: number | null): DayMarks {
  const from = plan.call;
  const end = wrap === null ? null : clockFraction(wrapSeconds(wrap, from));
  const until = Math.max(plan.ends, end ?? 0, from + 1 / 24);
  const isWithin = (time: number): boolean => time >= from && time <= until;
  const now = clock === null ? null : ([clock, clock + 1].find(isWithin) ?? null);
  return { from, until, wrap: end, now };
}
