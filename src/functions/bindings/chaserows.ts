import { chaseDays } from "../../domain/loans/chaseDays";
import { chaseRows } from "../../domain/loans/chaseRows";
import { usualPatienceDays } from "../../domain/loans/usualPatienceDays";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { readCalendar } from "../../sheet/readCalendar";
import { readDate } from "../../sheet/readDate";
import { readRequests } from "../../sheet/readRequests";
import { readTable } from "../../sheet/readTable";
import { readWholeDays } from "../../sheet/readWholeDays";
import { withOwnColumns } from "../../sheet/withOwnColumns";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The requests to chase today: those unanswered for some days, and those answered and not collected while the need is near.
 *
 * @customfunction CHASEROWS
 * @family Loans
 * @answers Whom must I ring today?
 * @param rows The requests with their heading row, columns in any order; needs Asked, Answer (or Answered) and Needed by.
 * @param asOf The day to look at. A date, or text such as 2026-03-05.
 * @param [patience] The working days after which an unanswered request is chased, and within which a need is near; 2 when left out.
 * @param [closed] The days that are no working days, such as public holidays; a range of dates in any order, or what HOLIDAYS gives, with its headings.
 * @param [weekend] The closed weekdays, as a number 1 to 7 or 11 to 17 (1, Saturday and Sunday, when left out) or as text of seven 0 and 1, Monday first, such as "0000011".
 * @param [columns] Which heading means what, where yours is not understood, such as "asked=Mailed; neededBy=For".
 * @shape A table that spills: the heading row, then each request to chase with its own columns as typed; the soonest need first, one already past before all, one without a day last; the heading row alone when nothing is to be chased.
 * @units Working days, the day asked being day 0; dates as yyyy-mm-dd.
 * @blanks Answer blank: unanswered, unless a day answered is filled. Asked blank on an unanswered request: not sent yet, not listed. Needed by blank on an answered one: never near. Collected blank: not collected. Patience blank: 2.
 * @bounds Dates from 1900-01-01 to 9999-12-31; patience whole and 0 or more; up to a whole sheet of rows. "No" is left out, "waiting" is unanswered, a filled Collected ends it.
 * @errors A column that is missing or could be two things, an asOf that is no date, text in closed, and a weekend that closes all seven days are #VALUE!. A request of which it cannot be told stands last, with the error in the cell that cannot be read.
 * @source Common practice, no source; working days as in OpenFormula 6.10.14.
 * @example =TACK.CHASEROWS({"Lender","Asked","Needed by","Answer";"Maison Orla","2026-03-02","2026-03-12","";"Rail & Co","2026-03-02","2026-03-10","no";"Halden","2026-03-04","2026-03-09","yes"},DATE(2026,3,5)) gives {"Lender","Asked","Needed by","Answer";"Halden","2026-03-04","2026-03-09","yes";"Maison Orla","2026-03-02","2026-03-12",""}
 * @example =TACK.CHASEROWS({"Lender","Asked","Needed by","Answer";"Maison Orla","2026-03-02","2026-03-12","waiting"},DATE(2026,3,5),4) gives {"Lender","Asked","Needed by","Answer"}
 * @example =TACK.CHASEROWS({"Lender","Asked","Needed by","Answer"},DATE(2026,3,5),-1) fails patience: "-1" cannot be used
 * @returns {any[][]} The requests to chase.
 */
export function chaserows(
  rows: any[][],
  asOf: any,
  patience?: any,
  closed?: any[][],
  weekend?: any,
  columns?: any,
): any[][] {
  const day = needed(readDate(asOf, "asOf"), "asOf", "the day to look at, such as 2026-03-05");
  if (!day.ok) return answerTable(day);
  const patienceDays = readWholeDays(patience, "patience");
  if (!patienceDays.ok) return answerTable(patienceDays);
  const calendar = readCalendar(closed, weekend);
  if (!calendar.ok) return answerTable(calendar);
  const days = chaseDays(day.value, patienceDays.value ?? usualPatienceDays, calendar.value);
  if (!days.ok) return answerTable(days);
  const needs = ["asked", ["answer", "answered"], "neededBy"];
  const uses = ["answer", "answered", "collected"];
  const table = readTable({ cells: rangeArgument(rows), kind: "requests", needs, uses, columns });
  if (!table.ok) return answerTable(table);
  return answerTable(succeed(withOwnColumns(table.value, chaseRows(readRequests(table.value), days.value), [])));
}
