import type { CellPosition } from "../../sheet/cellPosition";

/** When a day's work begins and ends, and where the workbook says so. */
export interface CallAndWrap {
  /** Serial day; null where the workbook does not say which day it is for. */
  readonly date: number | null;
  /** Fraction of a day. */
  readonly call: number;
  /** null where it is not said. */
  readonly wrap: number | null;
  /** The cell of the call; null where it was typed into the pane. */
  readonly at: CellPosition | null;
  readonly sheetName: string;
}
