import { COUNTINGS } from "../../domain/loans/counting";
import { daysOut } from "../../domain/loans/daysOut";
import { readCalendar } from "../../sheet/readCalendar";
import { readChoice } from "../../sheet/readChoice";
import { readDate } from "../../sheet/readDate";
import { answer } from "../answer";

/**
 * The whole days a piece has been out, the day it went out being day 0.
 *
 * @customfunction DAYSOUT
 * @family Loans
 * @answers How long have we had it?
 * @param out The day the piece went out; a date, or text such as 2026-03-05.
 * @param back The day it came back; blank while it is out.
 * @param asOf The day to look at, such as TODAY(); may be blank once back is filled.
 * @param [counting] "calendar" counts all days (when left out), "working" the working days after the day out, up to and with the end.
 * @param [closed] The days that are no working days, such as public holidays; a range of dates in any order, or what HOLIDAYS gives, with its headings.
 * @param [weekend] The closed weekdays, as a number 1 to 7 or 11 to 17 (1, Saturday and Sunday, when left out) or as text of seven 0 and 1, Monday first, such as "0000011".
 * @shape One whole number.
 * @units Days; a back day after asOf is not yet back, and a piece that goes out after asOf has been out 0 days.
 * @blanks Out blank: #N/A. Back blank: counted up to asOf. AsOf blank while back is blank: #VALUE!. Blank cells in closed are passed over.
 * @bounds Dates from 1900-01-01 to 9999-12-31; a time of day is cut off. A weekend of "1111111" gives 0 working days.
 * @errors A day back before the day out, text dates like 03/04/26, an unknown counting and text in closed are #VALUE!.
 * @source Common practice, no source; working days as in OpenFormula 6.10.14.
 * @example =TACK.DAYSOUT(DATE(2026,3,2),DATE(2026,3,9),DATE(2026,3,20)) gives 7
 * @example =TACK.DAYSOUT(DATE(2026,3,2),,DATE(2026,3,20)) gives 18
 * @example =TACK.DAYSOUT(DATE(2026,3,2),DATE(2026,3,9),DATE(2026,3,20),"working") gives 5
 * @example =TACK.DAYSOUT(DATE(2026,3,2),DATE(2026,3,2),DATE(2026,3,20)) gives 0
 * @example =TACK.DAYSOUT(DATE(2026,3,9),DATE(2026,3,2),DATE(2026,3,20)) fails back: "2026-03-02" cannot be used
 * @example =TACK.DAYSOUT(DATE(2026,3,2),,) fails asOf is blank
 * @returns {any} The days out.
 */
export function daysout(out: any, back: any, asOf: any, counting?: any, closed?: any[][], weekend?: any): any {
  const outDay = readDate(out, "out");
  if (!outDay.ok) return answer(outDay);
  const backDay = readDate(back, "back");
  if (!backDay.ok) return answer(backDay);
  const day = readDate(asOf, "asOf");
  if (!day.ok) return answer(day);
  const counted = readChoice(counting, "counting", COUNTINGS);
  if (!counted.ok) return answer(counted);
  const calendar = readCalendar(closed, weekend);
  if (!calendar.ok) return answer(calendar);
  return answer(daysOut(outDay.value, backDay.value, day.value, counted.value ?? "calendar", calendar.value));
}
