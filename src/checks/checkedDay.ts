import type { PlannedDay } from "../domain/day/plannedDay";
import type { Outcome } from "../domain/outcome";
import type { SheetTable } from "../sheet/sheetTable";

/** One day of a looks table with its plan, or why it cannot be planned. */
export interface CheckedDay {
  readonly table: SheetTable;
  /** null where the looks name no day. */
  readonly date: number | null;
  readonly plan: Outcome<PlannedDay>;
}
