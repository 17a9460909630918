import { lenderBookOf } from "../../checks/lenderBookOf";
import { lenderCalendar } from "../../checks/lenderCalendar";
import { calendarOf } from "../../domain/dates/calendarOf";
import { chaseDays, type ChaseDays } from "../../domain/loans/chaseDays";
import { usualPatienceDays } from "../../domain/loans/usualPatienceDays";
import { readClosedDaysFound } from "../../sheet/readClosedDaysFound";
import type { ReadTables } from "../state/ReadTables";

const SATURDAY_AND_SUNDAY = 0b1100000;

/**
 * From when on the requests to a lender are chased, by the days that lender works and the closed days that the workbook lists; the
 * usual working week where the lenders table says nothing that can be read.
 */
export function chaseDaysByLender(read: ReadTables, asOf: number): (lender: string) => ChaseDays {
  const closedDays = readClosedDaysFound(read.workbook.sheets).days;
  const book = lenderBookOf(read);
  const known = new Map<string, ChaseDays>();
  return (lender) => {
    let days = known.get(lender);
    if (days === undefined) {
      const calendar = lenderCalendar(lender, book, closedDays) ?? calendarOf(SATURDAY_AND_SUNDAY, closedDays);
      const found = chaseDays(asOf, usualPatienceDays, calendar);
      // Neither calendar is closed on every weekday, so there is always such a day.
      days = found.ok ? found.value : { lastAsked: asOf, lastNear: asOf };
      known.set(lender, days);
    }
    return days;
  };
}
