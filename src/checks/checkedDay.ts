import type { Crew } from "../domain/day/crew";
import type { PlannedDay } from "../domain/day/plannedDay";
import type { Outcome } from "../domain/outcome";
import type { SheetTable } from "../sheet/sheetTable";
import type { CheckedRow } from "./checkedRow";

/** One day of a looks table with its plan, or why it cannot be planned. */
export interface CheckedDay {
  readonly table: SheetTable;
  /** null where the looks name no day. */
  readonly date: number | null;
  /** The day table's row for it, whose call, wrap and people the plan goes by; null where there is none. */
  readonly dayRow: CheckedRow | null;
  /** Whether the call is said there; else it is only likely, and of the plan's times no more than their order can be told. */
  readonly isCallSaid: boolean;
  /** The people the plan goes by. */
  readonly crew: Crew;
  readonly plan: Outcome<PlannedDay>;
}
