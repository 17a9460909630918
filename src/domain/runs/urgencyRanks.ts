/** Later days than the twenty soonest count as one, so that a sum of worths stays exact. */
const MOST_RANKS = 20;

/** 0 for what is due soonest, 1 for the day after that in the list, and so on; what has no due day comes last. */
export function urgencyRanks(due: readonly (number | null)[]): readonly number[] {
  const days = [...new Set(due.map((day) => day ?? Infinity))].sort((a, b) => a - b);
  return due.map((day) => Math.min(days.indexOf(day ?? Infinity), MOST_RANKS - 1));
}
