import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { moneyFields } from "../moneyFields";
import { moneyIn } from "../moneyIn";
import { replaceCell } from "../replaceCell";

/** "tbc" is left to the rule about missing values, which knows whether the piece is out. */
export const valueNotRead = defineRule({
  id: "valueNotRead",
  about: "Something in a money column that is no amount, or could be two.",
  why: "The piece is missing from the value at risk, or a total stops at it.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "receipts", "day"],
  fields: moneyFields,
  messages: {
    noAmount: '"{{given}}" is not an amount. Type a number like 1250, and words in a Note.',
    twoAmounts: '"{{given}}" could be {{first}} or {{second}}. Choose which.',
  },
  check(row, field, report) {
    const reading = moneyIn(row, field);
    if (reading.is === "no amount")
      return report({ row, field, messageId: "noAmount", data: { given: reading.given } });
    if (reading.is !== "two amounts") return;
    const { given, first, second } = reading;
    const suggestions = isTyped(row, field)
      ? [first, second].map((amount) => ({ label: `Make it ${amount}`, edits: [replaceCell(row, field, amount)] }))
      : [];
    report({ row, field, messageId: "twoAmounts", data: { given, first, second }, suggestions });
  },
});
