import type { ClosedDaysFound } from "./closedDaysFound";
import type { BagLimitNote } from "./bagLimitNote";
import type { CoverNote } from "./coverNote";
import type { CrewFound } from "./crewFound";
import type { DayNotes } from "./dayNotes";

/** What a workbook says beside its tables of pieces, lenders and looks. */
export interface WorkbookNotes {
  readonly crew: CrewFound;
  readonly closedDays: ClosedDaysFound;
  readonly days: readonly DayNotes[];
  readonly covers: readonly CoverNote[];
  /** What one bag may weigh; null where the workbook does not say. */
  readonly bagLimit: BagLimitNote | null;
}
