import type { Station } from "./station";

/** Where a day stands after the looks placed so far: when everybody and everything is free again. Written on as looks are placed. */
export interface DayState {
  readonly chairs: Station;
  readonly dressers: Station;
  readonly cameras: Station;
  /** By talent: the end of the last shot. */
  readonly talentFreeSeconds: number[];
  /** By talent: the look worn last, -1 before the first. */
  readonly lastLookOf: number[];
  /** By shared piece: the end of the shot of the look that wore it last, -Infinity before the first. */
  readonly pieceUntilSeconds: number[];
  /** By shared piece: that look, -1 before the first. */
  readonly pieceLookOf: number[];
  /** By look: the end of its shot, the call before it is placed. */
  readonly shotUntilSeconds: number[];
  /** The look shot last, -1 before the first. */
  previousShot: number;
  previousShotFromSeconds: number;
  /** The end of the last shot so far. */
  endSeconds: number;
}
