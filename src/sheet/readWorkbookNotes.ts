import { readBagLimitNote } from "./readBagLimitNote";
import { readClosedDaysFound } from "./readClosedDaysFound";
import { readCoverNotes } from "./readCoverNotes";
import { readCrewFound } from "./readCrewFound";
import { readDayNotes } from "./readDayNotes";
import type { SheetSnapshot } from "./sheetSnapshot";
import type { SheetTable } from "./sheetTable";
import type { WorkbookNotes } from "./workbookNotes";

/** The people, the closed days, the calls and wraps and the cover that a workbook names. */
export function readWorkbookNotes(sheets: readonly SheetSnapshot[], tables: readonly SheetTable[]): WorkbookNotes {
  return {
    crew: readCrewFound(sheets),
    closedDays: readClosedDaysFound(sheets),
    days: readDayNotes(sheets, tables),
    covers: readCoverNotes(sheets, tables),
    bagLimit: readBagLimitNote(sheets),
  };
}
