import type { WorkLook } from "./dayWork";

/**
 * How long the change into a look takes, by the look each talent comes from.
 *
 * A talent's first look of the day, and a pair of looks with no figure, count the look's own change. Where
 * several talents wear the look, the longest of their changes counts, since the look is ready when all are.
 */
export function changeSecondsFor(look: WorkLook, lastLookOf: readonly number[]): number {
  const from = look.changeSecondsFrom;
  if (from === null || look.talents.length === 0) return look.changeSeconds;
  let longest = 0;
  for (const talent of look.talents) {
    const seconds = from.get(lastLookOf[talent]!) ?? look.changeSeconds;
    if (seconds > longest) longest = seconds;
  }
  return longest;
}
