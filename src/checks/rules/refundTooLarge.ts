import { readKept } from "../../sheet/readKept";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { moneyIn } from "../moneyIn";

export const refundTooLarge = defineRule({
  id: "refundTooLarge",
  about: "More refunded, or refunded and kept, than the receipt was for.",
  why: "The money still to come back from the shop comes out too low.",
  severity: "error",
  fixable: false,
  scope: "row",
  tables: ["receipts"],
  needs: ["amount", "amountRefunded"],
  messages: {
    tooLarge: "{{refunded}} refunded of {{amount}} paid. Correct one of them.",
    withKept: "{{refunded}} refunded and {{kept}} kept of {{amount}} paid. Correct one of them.",
  },
  check(row, report) {
    const paid = moneyIn(row, "amount");
    const back = moneyIn(row, "amountRefunded");
    if (paid.is !== "number" || back.is !== "number" || paid.amount <= 0) return;
    const data = { refunded: back.amount, amount: paid.amount };
    if (back.amount > paid.amount) return report({ row, field: "amountRefunded", messageId: "tooLarge", data });
    const kept = readKept(cellIn(row, "kept"), "");
    if (!kept.ok || typeof kept.value !== "number" || back.amount <= 0) return;
    // Sums of cents drift in binary fractions; half a ten-thousandth is no money.
    if (back.amount + kept.value <= paid.amount + 0.00005) return;
    report({ row, field: "amountRefunded", messageId: "withKept", data: { ...data, kept: kept.value } });
  },
});
