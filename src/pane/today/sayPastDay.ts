import { sayDay } from "../sayDay";

/** Why looks of a day before the one looked at are shown, and when the next have their day; `days` soonest first. */
export function sayPastDay(days: readonly number[], asOf: number): string {
  const next = days.find((day) => day >= asOf);
  const then = next === undefined ? "no later day has looks" : `the next with looks is ${sayDay(next)}`;
  return `A day before the one looked at; ${then}.`;
}
