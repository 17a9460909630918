import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { amountFromTenThousandths } from "../../domain/value/amountFromTenThousandths";
import { receiptMoney } from "../../domain/value/receiptMoney";
import { refundDay } from "../../domain/value/refundDay";
import { usualRefundDays } from "../../domain/value/usualRefundDays";
import { readReceipts } from "../../sheet/readReceipts";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { isFarOff } from "../isFarOff";
import { sayCount } from "../sayCount";
import { textIn } from "../textIn";

/** The day and the money are those of REFUNDS. A receipt of which either cannot be told has findings of its own. */
export const refundWindowEnds = defineRule({
  id: "refundWindowEnds",
  about: "Money is still to come back on a receipt, and the shop's refund window ends within a week or has ended.",
  why: "After the window the pieces are bought, at the stylist's own cost.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["receipts"],
  needs: ["bought", "amount", "terms"],
  messages: {
    ends: "{{amount}} still to come back from {{shop}}, which refunds until {{day}}, {{left}}. Take it back, or type what is kept.",
    ended:
      "{{amount}} still to come back from {{shop}}, which refunded until {{day}}, {{ago}} ago. Ask the shop, or type what is kept.",
  },
  check(row, report, facts) {
    const bought = dayIn(row, "bought");
    if (bought === null || bought > facts.asOf || isFarOff(bought, facts.asOf)) return;
    const receipt = readReceipts({ ...row.table, dataRows: [row.row] }).at(0);
    const { toComeBack } = receiptMoney(receipt, facts.asOf);
    if (typeof toComeBack !== "number" || toComeBack <= 0) return;
    const lastDay = refundDay(receipt);
    if (typeof lastDay !== "number" || lastDay < bought || lastDay - facts.asOf > usualRefundDays) return;
    const amount = amountFromTenThousandths(toComeBack);
    const data = { amount, shop: textIn(row, "shop") ?? "the shop", day: isoFromSerial(lastDay) };
    const field = "terms";
    if (lastDay < facts.asOf)
      return report({ row, field, messageId: "ended", data: { ...data, ago: sayCount(facts.asOf - lastDay, "day") } });
    report({ row, field, messageId: "ends", data: { ...data, left: sayLeft(lastDay - facts.asOf) } });
  },
});

function sayLeft(days: number): string {
  return days === 0 ? "today" : days === 1 ? "tomorrow" : `in ${days} days`;
}
