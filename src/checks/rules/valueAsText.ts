import type { CellEdit } from "../../sheet/cellEdit";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { currencyIn } from "../currencyIn";
import { defineRule } from "../defineRule";
import { formulaIn } from "../formulaIn";
import { isOtherCurrency } from "../../domain/value/isOtherCurrency";
import { moneyFields } from "../moneyFields";
import { moneyIn } from "../moneyIn";
import { replaceCell } from "../replaceCell";

/**
 * The functions read such text, so no figure is wrong; Excel's own sums pass it over. Where the currency stands nowhere else, a
 * number alone would lose it: then the change is a suggestion.
 */
export const valueAsText = defineRule({
  id: "valueAsText",
  about: "An amount of money that is kept as text.",
  why: "The sheet's own sums and sorting pass text over, so a total at the bottom comes out too low.",
  severity: "warning",
  fixable: true,
  scope: "cell",
  tables: ["pieces", "receipts", "day"],
  fields: moneyFields,
  messages: {
    typed: '"{{given}}" is text, not a number. Make it {{amount}}.',
    losesCurrency: '"{{given}}" is text, not a number. Type {{amount}}, and keep {{currency}} in a Currency column.',
    fromFormula: 'The formula gives "{{given}}" as text. Let it give the number {{amount}} itself.',
  },
  check(row, field, report, facts) {
    const reading = moneyIn(row, field);
    if (reading.is !== "text") return;
    const { given, money } = reading;
    const { amount, currency } = money;
    // Below 0 and in another currency there is a graver finding in the same cell.
    if (amount < 0 || (currency !== null && contradicts(row, field, currency, facts))) return;
    if (formulaIn(row, field) !== null)
      return report({ row, field, messageId: "fromFormula", data: { given, amount } });
    const number = replaceCell(row, field, amount);
    const kept = currency === null ? [] : keepCurrency(row, field, currency, facts);
    if (kept !== null) {
      const and = kept.length === 0 ? "" : ` and Currency ${currency ?? ""}`;
      const fix = { label: `Make it the number ${amount}${and}`, edits: [number, ...kept] };
      return report({ row, field, messageId: "typed", data: { given, amount }, fix });
    }
    const data = { given, amount, currency: currency ?? "" };
    const suggestions = [{ label: `Make it the number ${amount}, without ${currency ?? ""}`, edits: [number] }];
    report({ row, field, messageId: "losesCurrency", data, suggestions });
  },
});

function contradicts(row: CheckedRow, field: string, currency: string, facts: CheckFacts): boolean {
  const named = currencyIn(row, facts) ?? row.table.hintOf?.[field]?.currency ?? null;
  return named !== null && isOtherCurrency(currency, named);
}

/** What must be written beside the number so that its currency is not lost; null where there is no place for it. */
function keepCurrency(row: CheckedRow, field: string, currency: string, facts: CheckFacts): readonly CellEdit[] | null {
  if (row.table.columnOf["currency"] === undefined) {
    const heading = row.table.hintOf?.[field]?.currency;
    return heading === currency ? [] : null;
  }
  if (cellIn(row, "currency") === null && formulaIn(row, "currency") === null)
    return [replaceCell(row, "currency", currency)];
  // "$" beside AUD says no more than AUD does; "USD" beside "$" would be lost.
  const named = currencyIn(row, facts);
  return named === currency || (named !== null && named.length === 3) ? [] : null;
}
