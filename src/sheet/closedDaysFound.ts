import type { CellPosition } from "./cellPosition";

/** The days on which nobody works, and where the workbook lists them: null where it lists none. */
export interface ClosedDaysFound {
  /** In the order of the sheet. */
  readonly days: readonly number[];
  readonly place: {
    /** The column's heading. */
    readonly at: CellPosition;
    readonly sheetName: string;
    /** The days of the column as a formula points at them. */
    readonly reference: string;
  } | null;
}
