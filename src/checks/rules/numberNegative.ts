import { readNumber } from "../../sheet/readNumber";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { moneyIn } from "../moneyIn";
import { replaceCell } from "../replaceCell";

/** Not in receipts: a negative amount there may be money given back. */
export const numberNegative = defineRule({
  id: "numberNegative",
  about: "A quantity, value or weight below 0.",
  why: "It takes away from the totals what it should add.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces"],
  fields: { pieces: ["quantity", "quantityBack", "value", "totalValue", "rentalFee", "deposit", "weight"] },
  messages: {
    negative: "{{given}} is below 0. Type {{positive}}, or what is right.",
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (cell === null || typeof cell === "object" || typeof cell === "boolean") return;
    const amount = amountOf(cell, () => moneyIn(row, field));
    if (amount === null || amount >= 0) return;
    const suggestions = isTyped(row, field)
      ? [{ label: `Make it ${-amount}`, edits: [replaceCell(row, field, -amount)] }]
      : [];
    report({ row, field, messageId: "negative", data: { given: cell, positive: -amount }, suggestions });
  },
});

function amountOf(cell: number | string, money: () => ReturnType<typeof moneyIn>): number | null {
  if (typeof cell === "number") return cell;
  // Only text with a minus or in brackets can be below 0, and reading every text would cost more than looking.
  if (!/[-−(]/.test(cell)) return null;
  const number = readNumber(cell, "");
  if (number.ok) return number.value;
  const reading = money();
  return reading.is === "text" ? reading.money.amount : null;
}
