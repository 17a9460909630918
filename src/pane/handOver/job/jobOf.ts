import { nameKey } from "../../../sheet/nameKey";
import type { WorkbookSnapshot } from "../../../sheet/sheetSnapshot";
import { sheetNotes } from "../../../sheet/sheetNotes";
import type { JobFacts } from "./JobFacts";
import { jobFields } from "./jobFields";

/** What is known of the job: as typed into the pane, else the text beside the word in a sheet's notes ("Job", "Tide line"). */
export function jobOf(workbook: WorkbookSnapshot, typed: Partial<JobFacts>): JobFacts {
  const notes = new Map<string, string>();
  for (const sheet of workbook.sheets) {
    // The headings of a table stand beside each other as a word and its value do.
    const headingRows = new Set(sheet.tables.map(({ row }) => row));
    for (const { label, value, at } of sheetNotes(sheet)) {
      if (headingRows.has(at.row)) continue;
      const key = nameKey(label);
      if (typeof value === "string" && value.trim() !== "" && !notes.has(key)) notes.set(key, value.trim());
    }
  }
  const known = jobFields.map(({ field, labels }) => {
    const noted = labels.map((label) => notes.get(nameKey(label))).find((found) => found !== undefined);
    return [field, typed[field]?.trim() || noted || ""];
  });
  return Object.fromEntries(known) as unknown as JobFacts;
}
