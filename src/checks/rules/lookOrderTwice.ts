import { cellName } from "../../sheet/cellName";
import { lookKey } from "../../sheet/lookKey";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { positionIn } from "../positionIn";
import { textIn } from "../textIn";

/** Each day may count anew. A look that stands on two rows has a finding of its own. */
export const lookOrderTwice = defineRule({
  id: "lookOrderTwice",
  about: "Two looks of one day with the same place in the order.",
  why: "Which of the two is shot first is left to which row comes first.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["looks"],
  needs: ["look", "order"],
  messages: {
    twice: "Place {{order}} is already given in {{cell}}. Give each look of the day a place of its own.",
  },
  check(table, report) {
    const first = new Map<string, CheckedRow>();
    for (const index of table.dataRows) {
      const row = { table, row: index };
      const order = cellIn(row, "order");
      // A blank reaches some hosts as 0.
      if (typeof order !== "number" || order === 0 || textIn(row, "look") === null) continue;
      const place = `${dayIn(row, "date") ?? ""}|${order}`;
      const earlier = first.get(place);
      if (earlier === undefined) first.set(place, row);
      else if (keyOf(earlier) !== keyOf(row)) {
        const at = positionIn(earlier, "order");
        report({ row, field: "order", messageId: "twice", data: { order, cell: cellName(at.row, at.column) } });
      }
    }
  },
});

function keyOf(row: CheckedRow): string {
  return lookKey(textIn(row, "look") ?? "");
}
