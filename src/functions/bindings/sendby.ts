import { sendByDate } from "../../domain/loans/sendByDate";
import { readCalendar } from "../../sheet/readCalendar";
import { readDate } from "../../sheet/readDate";
import { readWholeDays } from "../../sheet/readWholeDays";
import { answer } from "../answer";

/**
 * The last day to send a piece so that it is back by the day it is due.
 *
 * @customfunction SENDBY
 * @family Loans
 * @answers When must it leave to be back in time?
 * @param due The day the piece must be with its lender; a date, or text such as 2026-03-05.
 * @param transit The working days the courier takes; 0 when left blank.
 * @param [prep] The working days to clean, repair and pack before it leaves; 0 when left out.
 * @param [closed] The days on which nobody collects or receives, such as public holidays; a range of dates in any order, or what HOLIDAYS gives, with its headings.
 * @param [weekend] The closed weekdays, as a number 1 to 7 or 11 to 17 (1, Saturday and Sunday, when left out) or as text of seven 0 and 1, Monday first, such as "0000011".
 * @shape One date.
 * @units A whole day, shown as yyyy-mm-dd: hand it over that day, before the courier's cut-off.
 * @blanks Due blank: #N/A. Transit and prep blank: 0 days. Blank cells in closed are passed over.
 * @bounds Dates from 1900-01-01 to 9999-12-31; whole days of 0 or more; a time of day is cut off. A due day on a closed day first moves to the working day before.
 * @errors Days that are not whole or are below 0, text dates like 03/04/26, text in closed, and a weekend that closes all seven days are #VALUE!.
 * @source Common practice, no source; working days counted back as in OpenFormula 6.10.22.
 * @caution A courier's days are a promise and no certainty, and a late piece can cost a fee; where it is dear, leave a day to spare.
 * @example =TACK.SENDBY(DATE(2026,3,12),2) gives 2026-03-10
 * @example =TACK.SENDBY(DATE(2026,3,9),2,1) gives 2026-03-04
 * @example =TACK.SENDBY(DATE(2026,3,15),1) gives 2026-03-12
 * @example =TACK.SENDBY(DATE(2026,4,8),2,0,{"2026-04-03";"2026-04-06"}) gives 2026-04-02
 * @example =TACK.SENDBY(DATE(2026,3,12),1.5) fails transit: "1.5" cannot be used
 * @example =TACK.SENDBY("12/03/2026",2) fails could be 2026-03-12 or 2026-12-03
 * @returns {any} The last date to send it.
 */
export function sendby(due: any, transit: any, prep?: any, closed?: any[][], weekend?: any): any {
  const dueDay = readDate(due, "due");
  if (!dueDay.ok) return answer(dueDay);
  const transitDays = readWholeDays(transit, "transit");
  if (!transitDays.ok) return answer(transitDays);
  const prepDays = readWholeDays(prep, "prep");
  if (!prepDays.ok) return answer(prepDays);
  const calendar = readCalendar(closed, weekend);
  if (!calendar.ok) return answer(calendar);
  return answer(sendByDate(dueDay.value, transitDays.value ?? 0, prepDays.value ?? 0, calendar.value), "date");
}
