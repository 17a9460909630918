import type { PlannedDay } from "../domain/day/plannedDay";
import type { Outcome } from "../domain/outcome";
import type { CrewFound } from "../sheet/crewFound";
import type { DayNotes } from "../sheet/dayNotes";
import type { SheetTable } from "../sheet/sheetTable";

/** One day of a looks table with its plan, or why it cannot be planned. */
export interface CheckedDay {
  readonly table: SheetTable;
  /** null where the looks name no day. */
  readonly date: number | null;
  /** What the workbook says of it. Without a call the call is only likely, and of the plan's times no more than their order can be told. */
  readonly said: DayNotes;
  /** The people the plan goes by. */
  readonly people: CrewFound;
  readonly plan: Outcome<PlannedDay>;
  /** The same with no look waiting for another's pieces, so that it shows where they need one at once. */
  readonly apart: Outcome<PlannedDay>;
}
