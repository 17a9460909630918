import type { CheckedRow } from "../checkedRow";
import { defineRule } from "../defineRule";
import { looksOf } from "../looksOf";
import { sayCount } from "../sayCount";

/** Where every listed look has a number, a word without one ("spare jacket") is no look. Reported once for each look. */
export const lookNotListed = defineRule({
  id: "lookNotListed",
  about: "A look named with a piece that is no row of the looks table.",
  why: "The piece is packed for a look that nobody shoots, or a look is missing from the day's plan.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["pieces", "looks"],
  messages: {
    unknown: 'Look "{{look}}" ({{rows}}) is not in the looks table. Add it there, or correct the look.',
  },
  check(workbook, report, facts) {
    const listed = facts.looks();
    if (listed === null) return;
    const areNumbered = [...listed.keys()].every((key) => /\d/.test(key));
    const unknown = new Map<string, { readonly name: string; readonly rows: CheckedRow[] }>();
    for (const table of workbook.tables) {
      if (table.kind !== "pieces" || table.columnOf["look"] === undefined) continue;
      for (const index of table.dataRows) {
        const row = { table, row: index };
        for (const { name, key } of looksOf(row, facts)) {
          if (listed.has(key) || (areNumbered && !/\d/.test(key))) continue;
          const found = unknown.get(key);
          if (found === undefined) unknown.set(key, { name, rows: [row] });
          else found.rows.push(row);
        }
      }
    }
    for (const { name, rows } of unknown.values()) {
      const data = { look: name, rows: sayCount(rows.length, "piece") };
      report({ row: rows[0]!, field: "look", messageId: "unknown", data });
    }
  },
});
