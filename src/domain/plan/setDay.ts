import type { DayState } from "./dayState";

/**
 * Makes one state the same as another, in its own lists; from then on each goes its own way.
 *
 * Who served which look last explains a wait and decides nothing, so it stays behind.
 */
export function setDay(state: DayState, from: DayState): void {
  setNumbers(state.chairs.freeAtSeconds, from.chairs.freeAtSeconds);
  setNumbers(state.dressers.freeAtSeconds, from.dressers.freeAtSeconds);
  setNumbers(state.cameras.freeAtSeconds, from.cameras.freeAtSeconds);
  setNumbers(state.cameras.lastSet, from.cameras.lastSet);
  setNumbers(state.talentFreeSeconds, from.talentFreeSeconds);
  setNumbers(state.lastLookOf, from.lastLookOf);
  setNumbers(state.pieceUntilSeconds, from.pieceUntilSeconds);
  setNumbers(state.pieceLookOf, from.pieceLookOf);
  setNumbers(state.shotUntilSeconds, from.shotUntilSeconds);
  state.previousShot = from.previousShot;
  state.previousShotFromSeconds = from.previousShotFromSeconds;
  state.endSeconds = from.endSeconds;
}

function setNumbers(numbers: number[], from: readonly number[]): void {
  for (let at = 0; at < from.length; at++) numbers[at] = from[at]!;
}
