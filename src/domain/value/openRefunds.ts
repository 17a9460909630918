import { isProblem } from "../isProblem";
import type { ColumnFormat, ResultCell, ResultTable } from "../resultTable";
import { amountFromTenThousandths } from "./amountFromTenThousandths";
import { receiptMoney } from "./receiptMoney";
import type { ReceiptRows } from "./receiptRows";
import { refundDay } from "./refundDay";

/**
 * The receipts on which money is still to come back, with the last day of each shop's window; soonest first, then in sheet order.
 *
 * A window that has ended stays, with days below 0. Receipts without a day or without terms, and those of which the
 * day cannot be told, come last. A receipt dated after the day looked at is not there yet.
 */
export function openRefunds(receipts: ReceiptRows, asOf: number): ResultTable {
  const open: { readonly lastDay: number; readonly cells: ResultCell[] }[] = [];
  const { hasCurrencies } = receipts;
  for (let index = 0; index < receipts.count; index++) {
    const receipt = receipts.at(index);
    if (typeof receipt.bought === "number" && receipt.bought > asOf) continue;
    const { toComeBack } = receiptMoney(receipt, asOf);
    if (typeof toComeBack === "number" && toComeBack <= 0) continue;
    const day = refundDay(receipt);
    const cells: ResultCell[] = [
      receipt.shop,
      day,
      typeof day === "number" ? day - asOf : day,
      isProblem(toComeBack) ? toComeBack : amountFromTenThousandths(toComeBack),
    ];
    if (hasCurrencies) cells.push(receipt.currency);
    open.push({ lastDay: typeof day === "number" ? day : Infinity, cells });
  }
  // Array.prototype.sort keeps the order of equals, which is the sheet's.
  open.sort((a, b) => (a.lastDay === b.lastDay ? 0 : a.lastDay - b.lastDay));
  const formats: ColumnFormat[] = ["as is", "date", "as is", "money"];
  return {
    headings: ["Shop", "Refund by", "Days left", "To come back", ...(hasCurrencies ? ["Currency"] : [])],
    formats: hasCurrencies ? [...formats, "as is"] : formats,
    rows: open.map(({ cells }) => cells),
  };
}
