import type { CheckedRow } from "../checkedRow";
import { cellIn } from "../cellIn";
import { currencyIn } from "../currencyIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { moneyFields } from "../moneyFields";
import { moneyIn } from "../moneyIn";
import { replaceCell } from "../replaceCell";

/** A sheet that names no currency at all is in one, and needs none. */
export const currencyMissing = defineRule({
  id: "currencyMissing",
  about: "An amount without a currency in a table whose other rows name theirs.",
  why: "Amounts are never added across currencies, so a total stops at the row that names none.",
  severity: "error",
  fixable: false,
  scope: "table",
  tables: ["pieces", "receipts"],
  needs: ["currency"],
  messages: {
    missing: "{{amount}} has no currency, though other rows name theirs. Type it in Currency.",
  },
  check(table, report, facts) {
    const named = new Set<string>();
    const without: { readonly row: CheckedRow; readonly amount: number }[] = [];
    for (const index of table.dataRows) {
      const row = { table, row: index };
      const currency = currencyIn(row, facts);
      if (currency !== null) named.add(currency);
      if (cellIn(row, "currency") !== null) continue;
      const amount = bareAmount(row);
      if (amount !== null) without.push({ row, amount });
    }
    if (named.size === 0) return;
    const only = named.size === 1 ? [...named][0]! : null;
    for (const { row, amount } of without) {
      const suggestions =
        only === null || !isTyped(row, "currency")
          ? []
          : [{ label: `Write ${only}`, edits: [replaceCell(row, "currency", only)] }];
      report({ row, field: "currency", messageId: "missing", data: { amount }, suggestions });
    }
  },
});

/** The first amount of a row above 0; null where there is none or its own sign says the currency. */
function bareAmount(row: CheckedRow): number | null {
  for (const field of moneyFields[row.table.kind] ?? []) {
    const reading = moneyIn(row, field);
    if (reading.is === "text" && reading.money.currency !== null) return null;
    const amount = reading.is === "number" ? reading.amount : reading.is === "text" ? reading.money.amount : 0;
    if (amount > 0) return amount;
  }
  return null;
}
