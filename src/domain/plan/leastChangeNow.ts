import type { DayState } from "./dayState";
import type { DayWork } from "./dayWork";

/**
 * The shortest that the change into a look which is left can still be: from what one of its talents wears now, or from
 * another look that is left and that this talent wears.
 */
export function leastChangeNow(work: DayWork, state: DayState, index: number, left: readonly number[]): number {
  const { talents, changeSeconds, changeSecondsFrom } = work.looks[index]!;
  if (changeSecondsFrom === null || talents.length === 0) return changeSeconds;
  // All its talents change, and the longest of their changes counts.
  let longest = 0;
  for (const talent of talents) {
    let shortest = changeSecondsFrom.get(state.lastLookOf[talent]!) ?? changeSeconds;
    for (let at = 0; at < left.length; at++) {
      const other = left[at]!;
      if (other === index || !work.looks[other]!.talents.includes(talent)) continue;
      shortest = Math.min(shortest, changeSecondsFrom.get(other) ?? changeSeconds);
    }
    longest = Math.max(longest, shortest);
  }
  return longest;
}
