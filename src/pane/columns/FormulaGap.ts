import type { CellPosition } from "../../sheet/cellPosition";

/** A formula that reads a table by its headings alone, although the pane was told otherwise. */
export interface FormulaGap {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly before: string;
  /** The formula with the columns it needs, or null where that cannot be written for the user. */
  readonly after: string | null;
  /** What stands in the way of writing it, as the end of a sentence; "" where nothing does. */
  readonly obstacle: string;
}
