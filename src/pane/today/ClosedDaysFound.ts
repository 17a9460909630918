import type { CellPosition } from "../../sheet/cellPosition";

/** The days on which nobody works, and where the workbook lists them: null where it lists none. */
export interface ClosedDaysFound {
  readonly days: readonly number[];
  readonly place: { readonly at: CellPosition; readonly sheetName: string } | null;
}
