import { publicHolidays } from "../../domain/dates/publicHolidays";
import { needed } from "../../domain/needed";
import { readDate } from "../../sheet/readDate";
import { readHolidayPlace } from "../../sheet/readHolidayPlace";
import { answerTable } from "../answerTable";

/**
 * The public holidays of a country, or a part of one, to count working days by.
 *
 * @customfunction HOLIDAYS
 * @family Loans
 * @answers On which days is nobody there to take it back?
 * @param country The place by name or code: "United States", "England and Wales", "Scotland", "Northern Ireland", "Ireland", "France", "Italy" or "Milan", or US, UK-ENG, UK-SCT, UK-NIR, IE, FR, IT.
 * @param from The first day to list. A date, or text such as 2026-01-01.
 * @param to The last day to list, counted in.
 * @shape A table that spills: Date and Holiday, by date; the heading row alone when there is none. It may be given as it is, or its spill range, as closed in DUE, SENDBY, DAYSOUT and DAYSLATE.
 * @units Whole days, shown as yyyy-mm-dd: the day on which a holiday is observed, and not the weekend day it falls on, where the law moves it (the US and the UK).
 * @blanks Country, from or to blank: #VALUE!.
 * @bounds The United States 2018 to 2030 (federal), the three parts of the UK 2019 to 2028, Ireland 2023 to 2030, France 2019 to 2027, Italy and Milan 2019 to 2030.
 * @errors A place that is not known, which lists those that are; a day in a year for which the place's holidays are not known; a to before from.
 * @source US: 5 U.S.C. 6103, checked against published dates; UK: the GOV.UK bank holidays; Ireland, France, Italy: their laws, checked against published lists. Each stands in shared/holidays.json.
 * @caution States, towns and lenders close on days of their own, and single days are added at short notice: what the lender says decides.
 * @example =TACK.HOLIDAYS("Scotland",DATE(2026,6,1),DATE(2026,8,31)) gives {"Date","Holiday";"2026-06-15","World Cup bank holiday";"2026-08-03","Summer bank holiday"}
 * @example =TACK.HOLIDAYS("US",DATE(2027,12,20),"31 Dec 2027") gives {"Date","Holiday";"2027-12-24","Christmas Day (observed)";"2027-12-31","New Year's Day (observed)"}
 * @example =TACK.HOLIDAYS("UK-ENG","2026-05-05","2026-05-24") gives {"Date","Holiday"}
 * @example =TACK.HOLIDAYS("Narnia",DATE(2026,1,1),DATE(2026,12,31)) fails "Narnia" cannot be used; give United States, England and Wales, Scotland
 * @example =TACK.HOLIDAYS("Scotland",DATE(2028,1,1),DATE(2029,1,31)) fails a day of 2019 to 2028, the years for which the holidays of Scotland are known
 * @returns {any[][]} The holidays.
 */
export function holidays(country: any, from: any, to: any): any[][] {
  const place = needed(readHolidayPlace(country, "country"), "country", 'a place such as "Scotland" or "US"');
  if (!place.ok) return answerTable(place);
  const first = needed(readDate(from, "from"), "from", "the first day, such as 2026-01-01");
  if (!first.ok) return answerTable(first);
  const last = needed(readDate(to, "to"), "to", "the last day, such as 2026-12-31");
  if (!last.ok) return answerTable(last);
  return answerTable(publicHolidays(place.value, first.value, last.value));
}
