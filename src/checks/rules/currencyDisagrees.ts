import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import { currencyIn } from "../currencyIn";
import { defineRule } from "../defineRule";
import { isOtherCurrency } from "../../domain/value/isOtherCurrency";
import { isTyped } from "../isTyped";
import { moneyFields } from "../moneyFields";
import { moneyIn } from "../moneyIn";
import { replaceCell } from "../replaceCell";

const MONEY_OF_RECEIPT = ["amount", "kept", "amountRefunded"];

export const currencyDisagrees = defineRule({
  id: "currencyDisagrees",
  about: "An amount whose currency sign is not the currency of its row.",
  why: "One of the two is wrong, and the value at risk is added up in the wrong currency.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "receipts"],
  fields: { ...moneyFields, receipts: MONEY_OF_RECEIPT },
  messages: {
    otherThanRow: '"{{given}}" is in {{sign}}, but Currency says {{currency}}. Correct one of them.',
    otherThanPaid: '"{{given}}" is in {{sign}}, but the receipt is in {{currency}}. Correct one of them.',
    otherThanHeading:
      '"{{given}}" is in {{sign}}, but the heading says {{currency}}. Correct the amount, or add a Currency column.',
  },
  check(row, field, report, facts) {
    const reading = moneyIn(row, field);
    const sign = reading.is === "text" ? reading.money.currency : null;
    if (reading.is !== "text" || sign === null) return;
    const { given, money } = reading;
    const currency = currencyIn(row, facts);
    if (currency === null) {
      const heading = row.table.hintOf?.[field]?.currency ?? null;
      if (cellIn(row, "currency") !== null) return;
      if (heading === null) {
        const first = row.table.kind === "receipts" ? firstSign(row) : null;
        if (first === null || !isOtherCurrency(sign, first)) return;
        return report({ row, field, messageId: "otherThanPaid", data: { given, sign, currency: first } });
      }
      if (!isOtherCurrency(sign, heading)) return;
      return report({ row, field, messageId: "otherThanHeading", data: { given, sign, currency: heading } });
    }
    if (!isOtherCurrency(sign, currency)) return;
    const suggestions = [];
    if (isTyped(row, field)) {
      suggestions.push({
        label: `Make it ${money.amount} ${currency}`,
        edits: [replaceCell(row, field, money.amount)],
      });
      if (isTyped(row, "currency")) {
        const edits = [replaceCell(row, field, money.amount), replaceCell(row, "currency", sign)];
        suggestions.push({ label: `Make it ${money.amount} ${sign}`, edits });
      }
    }
    report({ row, field, messageId: "otherThanRow", data: { given, sign, currency }, suggestions });
  },
});

/** What is paid, kept and refunded is reckoned in the currency of the first of them that names one. */
function firstSign(row: CheckedRow): string | null {
  for (const field of MONEY_OF_RECEIPT) {
    const reading = moneyIn(row, field);
    if (reading.is === "text" && reading.money.currency !== null) return reading.money.currency;
  }
  return null;
}
