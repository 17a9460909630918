import { addMonths } from "../dates/addMonths";
import { isOpenDay } from "../dates/isOpenDay";
import { lastSerial } from "../dates/lastSerial";
import { openDayOnOrAfter } from "../dates/openDayOnOrAfter";
import { openDayOnOrBefore } from "../dates/openDayOnOrBefore";
import { sayTerms } from "../dates/terms/sayTerms";
import type { Terms } from "../dates/terms/terms";
import { weekdayFromSerial } from "../dates/weekdayFromSerial";
import type { WorkingCalendar } from "../dates/workingCalendar";
import { workdayOffset } from "../dates/workdayOffset";
import { ymdFromSerial } from "../dates/ymdFromSerial";
import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { noOpenWeekday } from "./noOpenWeekday";
import type { Roll } from "./roll";

/**
 * The serial day a piece is due, by the lender's terms.
 *
 * Days, months, weekdays and months' ends that fall on a closed day roll; back never reaches the day they count from or one
 * before it, and rolls on instead. The same day, fixed days and terms from a shop's receipt never roll. Working days count
 * the day they are counted from as day 0.
 *
 * Problems: argument-missing where terms count from a shoot day that is not given; nothing-to-compute where they count from
 * an out day that is not given; argument-not-usable where every weekday is closed or the day lies after 9999-12-31.
 */
export function dueDate(
  out: number | null,
  terms: Terms,
  shoot: number | null,
  calendar: WorkingCalendar,
  roll: Roll = "back",
): Outcome<number> {
  if (calendar.openDaysAWeek === 0) return noOpenWeekday();
  if (terms.kind === "date") return succeed(terms.day);
  const from = terms.kind === "month end" ? "out" : terms.from;
  const anchor = from === "shoot" ? shoot : out;
  if (anchor === null) {
    if (from !== "shoot") return fail("nothing-to-compute", { what: "the due date", fill: "out" });
    return fail("argument-missing", {
      argument: "shoot",
      expected: `the last shoot day, which "${sayTerms(terms)}" counts from`,
    });
  }
  const due = dayByTerms(anchor, terms, calendar);
  if (due === null || due > lastSerial) return tooLate(terms);
  const fixed = roll === "none" || due === anchor || from === "receipt" || terms.kind === "working days";
  if (fixed || isOpenDay(due, calendar)) return succeed(due);
  const before = roll === "back" ? openDayOnOrBefore(due, calendar)! : anchor;
  const rolled = before > anchor ? before : openDayOnOrAfter(due, calendar)!;
  return rolled > lastSerial ? tooLate(terms) : succeed(rolled);
}

function dayByTerms(anchor: number, terms: Exclude<Terms, { kind: "date" }>, calendar: WorkingCalendar): number | null {
  switch (terms.kind) {
    case "days":
      return anchor + terms.count;
    case "working days":
      return workdayOffset(anchor, terms.count, calendar);
    case "months":
      return addMonths(anchor, terms.count);
    case "weekday":
      return anchor + 1 + ((terms.weekday - weekdayFromSerial(anchor) + 6) % 7);
    case "month end": {
      const nextMonth = addMonths(anchor - ymdFromSerial(anchor).day + 1, terms.monthsOn + 1);
      return nextMonth === null ? null : nextMonth - 1;
    }
  }
}

function tooLate(terms: Terms): Outcome<never> {
  return fail("argument-not-usable", {
    argument: "terms",
    given: sayTerms(terms),
    expected: "terms that end by 9999-12-31",
  });
}
