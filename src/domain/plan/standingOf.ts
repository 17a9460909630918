import type { DayState } from "./dayState";
import type { DayWork } from "./dayWork";
import { handedOverSeconds } from "./handedOverSeconds";
import type { PartDay } from "./partDay";

/**
 * What decides about all that follows: when everything that is still needed is free, each number the better the smaller.
 *
 * Chairs, dressers and cameras are as good as one another, so they stand sorted. While the meal is open, what follows
 * depends on which ends are in time, and on steps that the meal would move: null where there are such.
 */
export function standingOf(
  work: DayWork,
  state: DayState,
  { left, meal, allInTime, lastEndInTime }: Pick<PartDay, "left" | "meal" | "allInTime" | "lastEndInTime">,
): number[] | null {
  const isOpen = work.meal !== null && meal === null;
  if (isOpen && !allInTime) return null;
  // Nothing that is left begins before the meal is over, but for a camera's crossing and what is handed over.
  const notBefore = meal === null ? work.callSeconds : meal.untilSeconds;
  const standing: number[] = isOpen ? [lastEndInTime] : [];
  addSorted(standing, state.chairs.freeAtSeconds, notBefore);
  addSorted(standing, state.dressers.freeAtSeconds, notBefore);
  if (work.crossingSeconds === 0) addSorted(standing, state.cameras.freeAtSeconds, notBefore);
  else standing.push(...state.cameras.freeAtSeconds);
  const first = standing.length;
  for (let talent = 0; talent < work.talentCount; talent++) standing.push(0);
  for (const index of left) {
    for (const talent of work.looks[index]!.talents)
      standing[first + talent] = Math.max(notBefore, state.talentFreeSeconds[talent]!);
  }
  for (const index of left) {
    const look = work.looks[index]!;
    for (const piece of look.pieces)
      standing.push(Math.max(notBefore, handedOverSeconds(work, state, look, piece, meal)));
  }
  if (work.cameras > 1) {
    standing.push(state.previousShotFromSeconds, state.endSeconds);
    for (const index of left)
      for (const before of work.looks[index]!.after) standing.push(state.shotUntilSeconds[before]!);
  }
  return standing;
}

function addSorted(standing: number[], freeAtSeconds: readonly number[], notBefore: number): void {
  const first = standing.length;
  for (let unit = 0; unit < freeAtSeconds.length; unit++) {
    const seconds = Math.max(freeAtSeconds[unit]!, notBefore);
    let at = first + unit;
    for (; at > first && standing[at - 1]! > seconds; at--) standing[at] = standing[at - 1]!;
    standing[at] = seconds;
  }
}
