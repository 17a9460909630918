import { cellName } from "../../sheet/cellName";
import { lookKey } from "../../sheet/lookKey";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { positionIn } from "../positionIn";
import { textIn } from "../textIn";

/** Each day may number its looks anew. */
export const lookNumberTwice = defineRule({
  id: "lookNumberTwice",
  about: "Two rows of the looks table with one look number on one day.",
  why: "The day cannot be planned, and pieces go to whichever of the two is met first.",
  severity: "error",
  fixable: false,
  scope: "table",
  tables: ["looks"],
  needs: ["look"],
  messages: {
    twice: "Look {{look}} already stands in {{cell}}. Give each look of a day a number of its own.",
  },
  check(table, report) {
    const first = new Map<string, CheckedRow>();
    for (const index of table.dataRows) {
      const row = { table, row: index };
      const look = textIn(row, "look");
      const key = look === null ? "" : lookKey(look);
      if (look === null || key === "") continue;
      const onDay = `${dayIn(row, "date") ?? ""}|${key}`;
      const earlier = first.get(onDay);
      if (earlier === undefined) {
        first.set(onDay, row);
        continue;
      }
      const at = positionIn(earlier, "look");
      report({
        row,
        field: "look",
        messageId: "twice",
        data: { look: lookName(look), cell: cellName(at.row, at.column) },
      });
    }
  },
});
