import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
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
  reads: { pieces: ["look", "piece"] },
  messages: {
    unknown: "Look {{look}} ({{rows}}) is not in the looks table. Add it there, or correct the look.",
  },
  check(_workbook, report, facts) {
    const listed = facts.looks();
    if (listed === null) return;
    const areNumbered = [...listed.keys()].every((key) => /\d/.test(key));
    for (const [key, { name, rows }] of facts.lookPieces()) {
      if (listed.has(key) || (areNumbered && !/\d/.test(key))) continue;
      report({
        row: rows[0]!,
        field: "look",
        messageId: "unknown",
        data: { look: lookName(name), rows: sayCount(rows.length, "piece") },
      });
    }
  },
});
