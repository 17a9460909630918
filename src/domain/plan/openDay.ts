import type { DayState } from "./dayState";
import type { DayWork } from "./dayWork";
import { openStation } from "./openStation";

/** The day at call, nothing placed yet and everybody free. */
export function openDay(work: DayWork): DayState {
  const { callSeconds } = work;
  return {
    chairs: openStation(work.chairs, callSeconds),
    dressers: openStation(work.dressers, callSeconds),
    cameras: openStation(work.cameras, callSeconds),
    talentFreeSeconds: new Array<number>(work.talentCount).fill(callSeconds),
    lastLookOf: new Array<number>(work.talentCount).fill(-1),
    pieceUntilSeconds: new Array<number>(work.pieceCount).fill(-Infinity),
    pieceLookOf: new Array<number>(work.pieceCount).fill(-1),
    shotUntilSeconds: new Array<number>(work.looks.length).fill(callSeconds),
    previousShot: -1,
    previousShotFromSeconds: callSeconds,
    endSeconds: callSeconds,
  };
}
