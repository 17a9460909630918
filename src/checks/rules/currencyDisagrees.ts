import { cellIn } from "../cellIn";
import { currencyIn } from "../currencyIn";
import { defineRule } from "../defineRule";
import { isOtherCurrency } from "../isOtherCurrency";
import { isTyped } from "../isTyped";
import { moneyFields } from "../moneyFields";
import { moneyIn } from "../moneyIn";
import { replaceCell } from "../replaceCell";

export const currencyDisagrees = defineRule({
  id: "currencyDisagrees",
  about: "An amount whose currency sign is not the currency of its row.",
  why: "One of the two is wrong, and the value at risk is added up in the wrong currency.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "receipts"],
  fields: moneyFields,
  messages: {
    otherThanRow: '"{{given}}" is in {{sign}}, but Currency says {{currency}}. Correct one of them.',
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
      if (heading === null || cellIn(row, "currency") !== null || !isOtherCurrency(sign, heading)) return;
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
