import type { CellPosition } from "../../sheet/cellPosition";
import type { SheetSnapshot, TableArea } from "../../sheet/sheetSnapshot";

/** The host's table in which the workbook keeps its closed days, or would. */
export interface ClosedDaysTable {
  readonly sheet: SheetSnapshot;
  readonly area: TableArea;
  /** Its heading of the days. */
  readonly at: CellPosition;
  /** Columns counted from the table's first: of the days, and of what each is for; null where it has none. */
  readonly dayColumn: number;
  readonly nameColumn: number | null;
}
