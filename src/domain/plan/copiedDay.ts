import type { DayState } from "./dayState";

/** The same state again, for itself; like `setDay` it leaves behind who served which look last. */
export function copiedDay(state: DayState): DayState {
  const { chairs, dressers, cameras } = state;
  return {
    chairs: { ...chairs, freeAtSeconds: chairs.freeAtSeconds.slice() },
    dressers: { ...dressers, freeAtSeconds: dressers.freeAtSeconds.slice() },
    cameras: { ...cameras, freeAtSeconds: cameras.freeAtSeconds.slice(), lastSet: cameras.lastSet.slice() },
    talentFreeSeconds: state.talentFreeSeconds.slice(),
    lastLookOf: state.lastLookOf.slice(),
    shotUntilSeconds: state.shotUntilSeconds.slice(),
    previousShot: state.previousShot,
    previousShotFromSeconds: state.previousShotFromSeconds,
    endSeconds: state.endSeconds,
  };
}
