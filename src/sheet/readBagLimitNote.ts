import type { BagLimitNote } from "./bagLimitNote";
import { gramsPerUnit } from "./gramsPerUnit";
import { readGrams } from "./readGrams";
import { readHeading } from "./readHeading";
import { sheetNotes } from "./sheetNotes";
import type { SheetSnapshot } from "./sheetSnapshot";

const GRAMS_PER_KG = 1000;

/**
 * What the workbook says beside its tables that one bag may weigh ("Bag limit", 12 kg): the first such note; null where there is none.
 *
 * A bare number is in the unit that the note names ("Bag limit (lb)"), else in kilograms. What cannot be read as a weight above 0 is passed over.
 */
export function readBagLimitNote(sheets: readonly SheetSnapshot[]): BagLimitNote | null {
  for (const sheet of sheets) {
    for (const { label, value, at } of sheetNotes(sheet)) {
      const meaning = readHeading("day", label);
      if (meaning?.readings[0]?.field !== "bagLimit") continue;
      const perUnit = (meaning.hint.unit === null ? null : gramsPerUnit(meaning.hint.unit)) ?? GRAMS_PER_KG;
      const grams = readGrams(value, "", perUnit);
      if (grams.ok && grams.value !== null && grams.value > 0)
        return { at, sheetName: sheet.name, heading: label, raw: value, grams: grams.value };
    }
  }
  return null;
}
