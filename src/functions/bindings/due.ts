import { dueDate } from "../../domain/loans/dueDate";
import { ROLLS } from "../../domain/loans/roll";
import { needed } from "../../domain/needed";
import { readCalendar } from "../../sheet/readCalendar";
import { readChoice } from "../../sheet/readChoice";
import { readDate } from "../../sheet/readDate";
import { readTerms } from "../../sheet/readTerms";
import { answer } from "../answer";

/**
 * The date a piece is due back, by the lender's terms.
 *
 * @customfunction DUE
 * @family Loans
 * @answers When is it due back?
 * @param out The day the piece went out; a date, or text such as 2026-03-05 or 5 Mar 2026.
 * @param terms The lender's words, such as "7 days", "3 working days", "next working day", "same day", "5 working days after shoot", "30 days from receipt" or "by 2026-03-05", or a number of calendar days.
 * @param [shoot] The last shoot day, which terms "after shoot" or "after wrap" count from.
 * @param [closed] The days on which the lender does not work, such as public holidays; a range of dates in any order, or what HOLIDAYS gives, with its headings.
 * @param [weekend] The closed weekdays, as a number 1 to 7 or 11 to 17 (1, Saturday and Sunday, when left out) or as text of seven 0 and 1, Monday first, such as "0000011".
 * @param [roll] Where calendar days move that end on a closed day: "back" to the working day before (when left out), "on" to the one after, "none" stays.
 * @shape One date.
 * @units A whole day, shown as yyyy-mm-dd; weeks are 7 days, hours must make whole days, months clip at the month's end, a weekday is the first one after the day counted from.
 * @blanks Out blank: #N/A, unless the terms do without it. Terms blank or 0: #VALUE!. Shoot blank where the terms need it: #VALUE!. Blank cells in closed are passed over.
 * @bounds Dates from 1900-01-01 to 9999-12-31; spans up to 3650 days, numbers alone up to 999; a time of day is cut off. Rolling back never reaches the day counted from: it rolls on instead. The same day, fixed days and terms from a receipt never roll.
 * @errors Terms that are not understood, or read two ways, are #VALUE! that names the part; so are text dates like 03/04/26, text in closed, and a weekend that closes all seven days.
 * @source Common practice, no source: terms count from collection, the last shoot day (day 0) or the receipt, and a closed day moves back. Working days as in OpenFormula 6.10.22. "Jours ouvrables", "giorni feriali" and "Werktage" are read as working days; where Saturday counts, give weekend 11.
 * @caution A due date read wrongly can cost a late fee or the price of the piece; the lender's slip decides.
 * @example =TACK.DUE(DATE(2026,3,2),"3 working days") gives 2026-03-05
 * @example =TACK.DUE(DATE(2026,3,2),"5 working days after shoot",DATE(2026,3,6)) gives 2026-03-13
 * @example =TACK.DUE(DATE(2026,3,2),"5 days") gives 2026-03-06
 * @example =TACK.DUE(DATE(2026,3,2),"5 days",,,,"on") gives 2026-03-09
 * @example =TACK.DUE(DATE(2026,4,1),"3 working days",,{"2026-04-03";"2026-04-06"}) gives 2026-04-08
 * @example =TACK.DUE("2026-01-31","1 month",,,,"none") gives 2026-02-28
 * @example =TACK.DUE(DATE(2026,3,2),"soonish") fails "soonish" in "soonish" is not understood
 * @example =TACK.DUE(DATE(2026,3,2),"by 03/04/26") fails could be 2026-04-03 or 2026-03-04
 * @example =TACK.DUE(DATE(2026,3,2),"2 days after wrap") fails shoot is blank
 * @returns {any} The date it is due.
 */
export function due(out: any, terms: any, shoot?: any, closed?: any[][], weekend?: any, roll?: any): any {
  const agreed = needed(
    readTerms(terms, "terms"),
    "terms",
    'the lender\'s terms, such as "7 days" or "3 working days"',
  );
  if (!agreed.ok) return answer(agreed);
  const outDay = readDate(out, "out");
  if (!outDay.ok) return answer(outDay);
  const shootDay = readDate(shoot, "shoot");
  if (!shootDay.ok) return answer(shootDay);
  const calendar = readCalendar(closed, weekend);
  if (!calendar.ok) return answer(calendar);
  const rollTo = readChoice(roll, "roll", ROLLS);
  if (!rollTo.ok) return answer(rollTo);
  return answer(dueDate(outDay.value, agreed.value, shootDay.value, calendar.value, rollTo.value ?? "back"), "date");
}
