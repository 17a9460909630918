import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { textIn } from "../textIn";

/** Only where most looks of the day follow each other by one: an order in tens leaves room on purpose, and a day may begin with any number. */
export const lookOrderGap = defineRule({
  id: "lookOrderGap",
  about: "An order of looks with a number left out, when the others follow each other.",
  why: "A look was dropped, or it is missing from the day.",
  severity: "note",
  fixable: false,
  scope: "table",
  tables: ["looks"],
  needs: ["look", "order"],
  messages: {
    gap: "The order goes from {{before}} to {{order}}. Add the look that is missing, or number on.",
  },
  check(table, report) {
    const byDay = new Map<number | null, Map<number, CheckedRow>>();
    for (const index of table.dataRows) {
      const row = { table, row: index };
      const order = cellIn(row, "order");
      if (typeof order !== "number" || !Number.isInteger(order) || order < 1 || textIn(row, "look") === null) continue;
      const day = dayIn(row, "date");
      const ofDay = byDay.get(day);
      if (ofDay === undefined) byDay.set(day, new Map([[order, row]]));
      else if (!ofDay.has(order)) ofDay.set(order, row);
    }
    for (const ofDay of byDay.values()) {
      const orders = [...ofDay.keys()].sort((a, b) => a - b);
      const after = orders.slice(1).map((order, at) => ({ order, before: orders[at]! }));
      const gaps = after.filter(({ order, before }) => order - before > 1);
      if (gaps.length * 2 >= after.length) continue;
      for (const { order, before } of gaps) {
        report({ row: ofDay.get(order)!, field: "order", messageId: "gap", data: { before, order } });
      }
    }
  },
});
