import type { DayState } from "./dayState";
import type { DayWork } from "./dayWork";

/** Whether a step of that look, which is left, could end by then; false only where, whatever comes before it, none can. */
export function mayEndBy(
  work: DayWork,
  state: DayState,
  index: number,
  leastChange: number,
  bySeconds: number,
): boolean {
  const { talents, thereSeconds, hairMakeupSeconds, changeSecondsFrom, shootingSeconds, makeupFirst, shotAtSeconds } =
    work.looks[index]!;
  if (shotAtSeconds !== null) return true;
  let from = thereSeconds;
  for (const talent of talents) from = Math.max(from, state.talentFreeSeconds[talent]!);
  const inTime = (freeAtSeconds: readonly number[], lengthSeconds: number): boolean =>
    Math.max(from, Math.min(...freeAtSeconds)) + lengthSeconds <= bySeconds;
  if (makeupFirst && hairMakeupSeconds > 0) return inTime(state.chairs.freeAtSeconds, hairMakeupSeconds);
  if (leastChange > 0) return inTime(state.dressers.freeAtSeconds, leastChange);
  // A change of which the shortest is none may still be one.
  if (changeSecondsFrom !== null && inTime(state.dressers.freeAtSeconds, 0)) return true;
  if (hairMakeupSeconds > 0) return inTime(state.chairs.freeAtSeconds, hairMakeupSeconds);
  return inTime(state.cameras.freeAtSeconds, shootingSeconds);
}
