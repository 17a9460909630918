import { lateFee } from "../../domain/loans/lateFee";
import { needed } from "../../domain/needed";
import { readLateCharge } from "../../sheet/readLateCharge";
import { readMoney } from "../../sheet/readMoney";
import { readWholeDays } from "../../sheet/readWholeDays";
import { answer } from "../answer";

/**
 * The fee a lender asks for a piece that is late.
 *
 * @customfunction LATEFEE
 * @family Loans
 * @answers What does being late cost?
 * @param value The value the fee is a share of; a number, or text such as "£1,250.00".
 * @param daysLate The whole days late, as DAYSLATE counts them.
 * @param fee What the lender asks: "2% a day", "5 a day", "10% once", or a number below 1 as the share a day.
 * @param [cap] The most that is asked: an amount, or a share of the value as text such as "50%"; no limit when left out.
 * @shape One amount.
 * @units Money, in the currency of value; shares of value; simple, not compounded, not rounded.
 * @blanks Value blank where a share is asked, and daysLate blank: #N/A. Fee blank: #VALUE!. Cap blank or 0: no limit.
 * @bounds Amounts and shares of 0 or more; whole days of 0 or more; 0 days late cost nothing. A number of 1 or more as fee, and one up to 1 as cap, could be an amount or a share and are #VALUE!.
 * @errors A fee that does not say whether it is by the day or once, days that are not whole, amounts below 0 or in two currencies, and text that is no amount are #VALUE!.
 * @source Common practice, no source: simple by the day on the value passed.
 * @caution An estimate from the words of the slip and no advice on what is owed: what was signed, and the law of the place, decide.
 * @example =TACK.LATEFEE(640,3,"2% a day") gives 38.4
 * @example =TACK.LATEFEE(640,3,0.02) gives 38.4
 * @example =TACK.LATEFEE("£640",3,"£5 a day") gives 15
 * @example =TACK.LATEFEE(640,3,"10% once") gives 64
 * @example =TACK.LATEFEE(640,60,"2% a day","50%") gives 320
 * @example =TACK.LATEFEE(640,60,"2% a day",100) gives 100
 * @example =TACK.LATEFEE(640,3,5) fails give text such as "5 a day", "5% a day"
 * @example =TACK.LATEFEE(640,-3,"2% a day") fails daysLate: "-3" cannot be used
 * @example =TACK.LATEFEE(,3,"2% a day") fails nothing to compute
 * @returns {any} The fee.
 */
export function latefee(value: any, daysLate: any, fee: any, cap?: any): any {
  const asked = needed(readLateCharge(fee, "fee"), "fee", 'what the lender asks, such as "2% a day" or "10% once"');
  if (!asked.ok) return answer(asked);
  const worth = readMoney(value, "value");
  if (!worth.ok) return answer(worth);
  const days = readWholeDays(daysLate, "daysLate");
  if (!days.ok) return answer(days);
  const most = readLateCharge(cap, "cap", true);
  if (!most.ok) return answer(most);
  return answer(lateFee(worth.value, days.value, asked.value, most.value), "money");
}
