import { COUNTINGS } from "../../domain/loans/counting";
import { daysLate } from "../../domain/loans/daysLate";
import { readCalendar } from "../../sheet/readCalendar";
import { readChoice } from "../../sheet/readChoice";
import { readDate } from "../../sheet/readDate";
import { readWholeDays } from "../../sheet/readWholeDays";
import { answer } from "../answer";

/**
 * The whole days a piece is, or came back, past the day it was due.
 *
 * @customfunction DAYSLATE
 * @family Loans
 * @answers How late is it?
 * @param due The day the piece is due, or the later day the lender agreed to; a date, or text such as 2026-03-05.
 * @param back The day it came back; blank while it is out.
 * @param asOf The day to look at, such as TODAY(); may be blank once back is filled.
 * @param [grace] The days of grace the lender allows, taken off the days late; 0 when left out.
 * @param [counting] "calendar" counts all days (when left out), "working" the working days after the day due, up to and with the end.
 * @param [closed] The days that are no working days, such as public holidays; a range of dates in any order, or what HOLIDAYS gives, with its headings.
 * @param [weekend] The closed weekdays, as a number 1 to 7 or 11 to 17 (1, Saturday and Sunday, when left out) or as text of seven 0 and 1, Monday first, such as "0000011".
 * @shape One whole number, never below 0.
 * @units Days; due on asOf is not late, and a back day after asOf is not yet back.
 * @blanks Due blank: #N/A. Back blank: counted up to asOf. AsOf blank while back is blank: #VALUE!. Grace blank: 0. Blank cells in closed are passed over.
 * @bounds Dates from 1900-01-01 to 9999-12-31; a time of day is cut off; grace whole and 0 or more. A weekend of "1111111" gives 0 working days.
 * @errors Text dates like 03/04/26, grace that is not whole or is below 0, an unknown counting and text in closed are #VALUE!.
 * @source Common practice, no source; working days as in OpenFormula 6.10.14.
 * @caution Late days can cost a fee; the lender's slip says from when and how they count.
 * @example =TACK.DAYSLATE(DATE(2026,3,5),,DATE(2026,3,9)) gives 4
 * @example =TACK.DAYSLATE(DATE(2026,3,5),DATE(2026,3,6),DATE(2026,3,9)) gives 1
 * @example =TACK.DAYSLATE(DATE(2026,3,5),,DATE(2026,3,9),1) gives 3
 * @example =TACK.DAYSLATE(DATE(2026,3,5),,DATE(2026,3,9),,"working") gives 2
 * @example =TACK.DAYSLATE(DATE(2026,3,5),,DATE(2026,3,5)) gives 0
 * @example =TACK.DAYSLATE(DATE(2026,3,5),,DATE(2026,3,9),-1) fails grace: "-1" cannot be used
 * @example =TACK.DAYSLATE("05/03/26",,DATE(2026,3,9)) fails could be 2026-03-05 or 2026-05-03
 * @returns {any} The days late.
 */
export function dayslate(
  due: any,
  back: any,
  asOf: any,
  grace?: any,
  counting?: any,
  closed?: any[][],
  weekend?: any,
): any {
  const dueDay = readDate(due, "due");
  if (!dueDay.ok) return answer(dueDay);
  const backDay = readDate(back, "back");
  if (!backDay.ok) return answer(backDay);
  const day = readDate(asOf, "asOf");
  if (!day.ok) return answer(day);
  const graceDays = readWholeDays(grace, "grace");
  if (!graceDays.ok) return answer(graceDays);
  const counted = readChoice(counting, "counting", COUNTINGS);
  if (!counted.ok) return answer(counted);
  const calendar = readCalendar(closed, weekend);
  if (!calendar.ok) return answer(calendar);
  return answer(
    daysLate(dueDay.value, backDay.value, day.value, graceDays.value ?? 0, counted.value ?? "calendar", calendar.value),
  );
}
