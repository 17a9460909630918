import type { CellPosition } from "../../sheet/cellPosition";
import { nameKey } from "../../sheet/nameKey";
import { readDate } from "../../sheet/readDate";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { sheetNotes } from "../../sheet/sheetNotes";

/** What the day a sheet counts for is called in its notes. */
const LABELS = ["as of", "as of day", "as of date", "as at", "as at date"].map(nameKey);

/** The day that the workbook itself counts for: a date beside the words "As-of day" at the head of a sheet; null where none says so. */
export function sheetDay(
  workbook: WorkbookSnapshot,
): { readonly day: number; readonly at: CellPosition; readonly sheetName: string } | null {
  for (const sheet of workbook.sheets) {
    for (const { label, value, at } of sheetNotes(sheet)) {
      if (!LABELS.includes(nameKey(label))) continue;
      const day = readDate(value, label);
      if (day.ok && day.value !== null) return { day: day.value, at, sheetName: sheet.name };
    }
  }
  return null;
}
