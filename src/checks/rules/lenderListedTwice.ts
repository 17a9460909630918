import { nameKey } from "../../sheet/nameKey";
import { cellName } from "../../sheet/cellName";
import type { CheckedRow } from "../checkedRow";
import { defineRule } from "../defineRule";
import { positionIn } from "../positionIn";
import { textIn } from "../textIn";

export const lenderListedTwice = defineRule({
  id: "lenderListedTwice",
  about: "A lender with two rows in the lenders table.",
  why: "Only the first row's terms, closed days and address are used, and the other may be the right one.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["lenders"],
  needs: ["lender"],
  messages: {
    twice: '"{{lender}}" is already listed in {{cell}}. Keep one row for each lender.',
  },
  check(table, report) {
    const first = new Map<string, CheckedRow>();
    for (const index of table.dataRows) {
      const row = { table, row: index };
      const lender = textIn(row, "lender");
      const key = lender === null ? "" : nameKey(lender);
      if (lender === null || key === "") continue;
      const earlier = first.get(key);
      if (earlier === undefined) first.set(key, row);
      else {
        const at = positionIn(earlier, "lender");
        report({ row, field: "lender", messageId: "twice", data: { lender, cell: cellName(at.row, at.column) } });
      }
    }
  },
});
