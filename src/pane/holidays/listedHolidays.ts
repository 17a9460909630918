import { publicHolidays } from "../../domain/dates/publicHolidays";
import { serialFromYmd } from "../../domain/dates/serialFromYmd";
import { needed } from "../../domain/needed";
import type { Outcome } from "../../domain/outcome";
import { succeed } from "../../domain/succeed";
import { readClosedDaysFound } from "../../sheet/readClosedDaysFound";
import { readHolidayPlace } from "../../sheet/readHolidayPlace";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";

/** A public holiday, and whether the workbook's closed days have it. */
export interface ListedHoliday {
  readonly day: number;
  readonly name: string;
  readonly isListed: boolean;
}

/** The public holidays of a place in whole years, both counted, as HOLIDAYS gives them. Problems: those of HOLIDAYS. */
export function listedHolidays(
  placeName: string,
  firstYear: number,
  lastYear: number,
  workbook: WorkbookSnapshot,
): Outcome<readonly ListedHoliday[]> {
  const place = needed(readHolidayPlace(placeName, "Place"), "Place", "a place of the list");
  if (!place.ok) return place;
  const holidays = publicHolidays(place.value, serialFromYmd(firstYear, 1, 1)!, serialFromYmd(lastYear, 12, 31)!);
  if (!holidays.ok) return holidays;
  const listed = new Set(readClosedDaysFound(workbook.sheets).days);
  return succeed(
    holidays.value.rows.map(([day, name]) => ({
      day: Number(day),
      name: String(name),
      isListed: listed.has(Number(day)),
    })),
  );
}
