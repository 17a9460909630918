import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { openRefunds } from "../../domain/value/openRefunds";
import { readDate } from "../../sheet/readDate";
import { readReceipts } from "../../sheet/readReceipts";
import { readTable } from "../../sheet/readTable";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The receipts on which money is still to come back, by the last day each shop refunds.
 *
 * @customfunction REFUNDS
 * @family Value at risk
 * @answers What must go back to which shop, by when, and how much comes back?
 * @param rows The receipts with their heading row, columns in any order; needs Shop, Bought, Amount and Terms.
 * @param asOf The day to look at. A date, or text such as 2026-03-05.
 * @param [columns] Which heading means what, where yours is not understood, such as "terms=Policy; amount=Till total".
 * @shape A table that spills: Shop, Refund by, Days left and To come back, soonest first, and Currency where the sheet has currencies; the heading row alone when nothing is open.
 * @units Whole days: the day of the receipt is day 0, and on the last day 0 days are left; a window that has ended stays, with days below 0. Money exact to the cent: Amount less what is kept less what was refunded.
 * @blanks Bought or Terms blank: no Refund by, listed last. Amount blank: nothing to come back. Kept blank: nothing kept. Refunded and Amount refunded blank: not refunded. Amount refunded blank or 0 with Refunded filled: all that is not kept.
 * @bounds Dates from 1900-01-01 to 9999-12-31; amounts of 0 or more. Receipts and refunds dated after asOf have not happened yet. Working days leave out Saturdays and Sundays, and no holidays.
 * @errors A column that is missing or could be two things, and an asOf that is no date, are #VALUE!. A cell that cannot be read leaves its error in the figures it spoils.
 * @source Common practice, no source: shops refund within a window of calendar days from the receipt.
 * @caution The receipt and the shop's own terms decide, also on condition, tags and how the money comes back; this is no tax advice.
 * @example =TACK.REFUNDS({"Shop","Bought","Amount","Kept","Terms","Refunded","Amount refunded";"Kessel","2026-03-02",250,"","28 days","","";"Odeon","2026-03-01",90,30,"14 days","","";"Kessel","2026-03-02",80,"yes","28 days","",""},DATE(2026,3,16)) gives {"Shop","Refund by","Days left","To come back";"Odeon","2026-03-15",-1,60;"Kessel","2026-03-30",14,250}
 * @example =TACK.REFUNDS({"Shop","Bought","Amount","Terms","Amount refunded";"Kessel","2026-03-02",250,"28 days",250},DATE(2026,3,16)) gives {"Shop","Refund by","Days left","To come back"}
 * @example =TACK.REFUNDS({"Shop","Amount";"Kessel",250},DATE(2026,3,16)) fails rows has no column headed Bought
 * @returns {any[][]} The open receipts.
 */
export function refunds(rows: any[][], asOf: any, columns?: any): any[][] {
  const day = needed(readDate(asOf, "asOf"), "asOf", "the day to look at, such as 2026-03-05");
  if (!day.ok) return answerTable(day);
  const table = readTable({
    cells: rangeArgument(rows),
    kind: "receipts",
    needs: ["shop", "bought", "amount", "terms"],
    uses: ["kept", "refunded", "amountRefunded", "currency"],
    columns,
  });
  if (!table.ok) return answerTable(table);
  return answerTable(succeed(openRefunds(readReceipts(table.value), day.value)));
}
