import { isProblem } from "../../domain/isProblem";
import { loanState } from "../../domain/loans/loanState";
import { usualWarningDays } from "../../domain/loans/usualWarningDays";
import { readDate } from "../../sheet/readDate";
import { readDone } from "../../sheet/readDone";
import { readWholeDays } from "../../sheet/readWholeDays";
import { answer } from "../answer";

/**
 * Where the loan of a piece stands: not out, out, due soon, due today, late, back, back late, or settled.
 *
 * @customfunction LOANSTATE
 * @family Loans
 * @answers Where does this loan stand?
 * @param out The day the piece went out; a date, or text such as 2026-03-05; blank while it is not out.
 * @param due The day it is due, or the later day the lender agreed to (Extended to), which then replaces it; may be blank.
 * @param back The day it came back; blank while it is out.
 * @param asOf The day to look at, such as TODAY().
 * @param [warn] From how many days before the due day on it says due soon; 3 when left out, 0 never.
 * @param [settled] Whether it is settled: "lost", "bought", "gifted", a day or a tick say so; blank and "no" say it is not.
 * @shape One of: not out, out, due soon, due today, late, back, back late, settled.
 * @units Words; warn is in calendar days.
 * @blanks Out blank: not out. Due blank: out, or back. Back blank: not back. AsOf blank: #VALUE! where it is needed. Settled blank: not settled.
 * @bounds Dates from 1900-01-01 to 9999-12-31; a time of day is cut off. A piece out after asOf is not out, back after asOf is not yet back, due on asOf is due today.
 * @errors Text dates like 03/04/26 and a warn that is not whole or is below 0 are #VALUE!.
 * @source Common practice, no source.
 * @example =TACK.LOANSTATE(DATE(2026,3,2),DATE(2026,3,12),,DATE(2026,3,5)) gives out
 * @example =TACK.LOANSTATE(DATE(2026,3,2),DATE(2026,3,12),,DATE(2026,3,9)) gives due soon
 * @example =TACK.LOANSTATE(DATE(2026,3,2),DATE(2026,3,12),,DATE(2026,3,12)) gives due today
 * @example =TACK.LOANSTATE(DATE(2026,3,2),DATE(2026,3,12),,DATE(2026,3,13)) gives late
 * @example =TACK.LOANSTATE(DATE(2026,3,2),DATE(2026,3,12),DATE(2026,3,13),DATE(2026,3,20)) gives back late
 * @example =TACK.LOANSTATE(DATE(2026,3,2),DATE(2026,3,12),DATE(2026,3,11),DATE(2026,3,20)) gives back
 * @example =TACK.LOANSTATE(DATE(2026,3,2),DATE(2026,3,12),,DATE(2026,3,20),,"lost") gives settled
 * @example =TACK.LOANSTATE(,DATE(2026,3,12),,DATE(2026,3,20)) gives not out
 * @example =TACK.LOANSTATE(DATE(2026,3,2),"03/04/26",,DATE(2026,3,5)) fails due: "03/04/26" could be
 * @returns {any} Where the loan stands.
 */
export function loanstate(out: any, due: any, back: any, asOf: any, warn?: any, settled?: any): any {
  const outDay = readDate(out, "out");
  if (!outDay.ok) return answer(outDay);
  const dueDay = readDate(due, "due");
  if (!dueDay.ok) return answer(dueDay);
  const backDay = readDate(back, "back");
  if (!backDay.ok) return answer(backDay);
  const day = readDate(asOf, "asOf");
  if (!day.ok) return answer(day);
  const warnDays = readWholeDays(warn, "warn");
  if (!warnDays.ok) return answer(warnDays);
  const isSettled = readDone(settled, "settled");
  if (isProblem(isSettled)) return answer({ ok: false, problem: isSettled });
  const warning = warnDays.value ?? usualWarningDays;
  return answer(loanState(outDay.value, dueDay.value, backDay.value, day.value, warning, isSettled ?? false));
}
