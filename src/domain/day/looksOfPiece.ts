import type { PlannedDay, PlannedLook } from "./plannedDay";

/** One day of looks as planned; null where its looks name no date. */
export interface DatedPlan {
  readonly date: number | null;
  readonly plan: PlannedDay;
}

/** A look on its day. */
export interface DatedLook {
  readonly day: DatedPlan;
  readonly planned: PlannedLook;
}

/**
 * The planned looks of one number that a piece can mean: all of them, or where each day numbers its looks anew those of
 * the piece's shoot day.
 */
export function looksOfPiece(key: string, shoot: number | null, days: readonly DatedPlan[]): readonly DatedLook[] {
  const found = days.flatMap((day) =>
    day.plan.looks.filter(({ look }) => look.key === key).map((planned) => ({ day, planned })),
  );
  const onDay = shoot === null || found.length < 2 ? [] : found.filter(({ day }) => day.date === shoot);
  return onDay.length > 0 ? onDay : found;
}
