import type { WaitKind } from "./daySchedule";
import type { Hold } from "./hold";

/** The three steps of one look as they were placed, each list by step. One such record is written over again and again. */
export interface PlacedLook {
  readonly fromSeconds: number[];
  readonly untilSeconds: number[];
  readonly waitKind: WaitKind[];
  readonly waitLook: number[];
  readonly waitTalent: number[];
  /** Which of the chairs, dressers or cameras does it, from 0; -1 for a step of no length. */
  readonly station: number[];
  /** What holds the next step back, while the look is being placed. */
  readonly hold: Hold;
}
