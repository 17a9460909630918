import { defineRule } from "../defineRule";
import { moneyIn } from "../moneyIn";

export const refundTooLarge = defineRule({
  id: "refundTooLarge",
  about: "More refunded than the receipt was for.",
  why: "The money still to come back from the shop comes out too low.",
  severity: "error",
  fixable: false,
  scope: "row",
  tables: ["receipts"],
  needs: ["amount", "amountRefunded"],
  messages: {
    tooLarge: "{{refunded}} refunded of {{amount}} paid. Correct one of them.",
  },
  check(row, report) {
    const amount = moneyIn(row, "amount");
    const refunded = moneyIn(row, "amountRefunded");
    if (amount.is !== "number" || refunded.is !== "number" || amount.amount <= 0 || refunded.amount <= amount.amount)
      return;
    const data = { refunded: refunded.amount, amount: amount.amount };
    report({ row, field: "amountRefunded", messageId: "tooLarge", data });
  },
});
