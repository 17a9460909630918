import type { Problem } from "../problem";

/** A span of days, the last not counted, on which it cannot be told what a row holds, or what that is worth. */
export interface ValueDoubt {
  readonly row: number;
  readonly from: number;
  readonly until: number;
  /** Whether it cannot even be told how many are held. */
  readonly ofPieces: boolean;
  readonly problem: Problem;
}
