import type { CellPosition } from "../../sheet/cellPosition";

/** A row of which it cannot be told whether it is out or late, with the sentence that says why. */
export interface UntoldLine {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly sentence: string;
}
