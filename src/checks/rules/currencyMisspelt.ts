import { currencyFromText } from "../../sheet/currencyFromText";
import { defineRule } from "../defineRule";
import { isOneSlip } from "../isOneSlip";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";
import { textIn } from "../textIn";

/** An unknown code alone may be a rare currency; beside a known one a slip away it is a slip. */
export const currencyMisspelt = defineRule({
  id: "currencyMisspelt",
  about: "A currency that nobody knows, one slip of the keyboard from one that other rows name.",
  why: "It counts as a currency of its own, and its amounts drop out of every total.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["pieces", "receipts"],
  needs: ["currency"],
  messages: {
    misspelt: '"{{given}}" is no known currency. Write {{currency}}, if that is meant.',
  },
  check(table, report) {
    const known = new Set<string>();
    const unknown = new Map<string, number>();
    for (const row of table.dataRows) {
      const text = textIn({ table, row }, "currency");
      if (text === null) continue;
      if (known.has(text) || unknown.has(text)) continue;
      const currency = currencyFromText(text);
      if (currency !== null) known.add(currency);
      else unknown.set(text, row);
    }
    for (const [given, index] of unknown) {
      const near = [...known].filter((code) => code.length === 3 && isOneSlip(code, given.toUpperCase()));
      if (near.length !== 1) continue;
      const row = { table, row: index };
      const rows = table.dataRows
        .map((each) => ({ table, row: each }))
        .filter((each) => textIn(each, "currency") === given && isTyped(each, "currency"));
      const edits = rows.map((each) => replaceCell(each, "currency", near[0]!));
      const suggestions = edits.length === 0 ? [] : [{ label: `Write ${near[0]!}`, edits }];
      report({ row, field: "currency", messageId: "misspelt", data: { given, currency: near[0]! }, suggestions });
    }
  },
});
