import type { Station } from "./station";

/**
 * Which of them takes the next look: the one that has been free longest, the first where tied.
 *
 * Looks are handed out in order and each is only free again after its last one, so that no later look is
 * fitted into a gap before an earlier one. It also makes the day safe to read: with no meal and no crossing,
 * one more of them, or a shorter step, can never make any step later.
 */
export function soonestFree(station: Station): number {
  const free = station.freeAtSeconds;
  let best = 0;
  for (let unit = 1; unit < free.length; unit++) {
    if (free[unit]! < free[best]!) best = unit;
  }
  return best;
}
