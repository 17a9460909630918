import type { CellPosition } from "../../sheet/cellPosition";

/** A row that cannot be counted, with the sentence that says why. */
export interface UntoldLine {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly sentence: string;
}
