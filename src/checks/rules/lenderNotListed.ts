import { defineRule } from "../defineRule";
import { fullerName } from "../fullerName";
import { nearNames } from "../nearNames";
import { rewriteNames } from "../rewriteNames";
import { sayCount } from "../sayCount";

/** Reported once for each name, at its first row, since one line in the lenders table or one correction mends all of them. */
export const lenderNotListed = defineRule({
  id: "lenderNotListed",
  about: "A lender that the lenders table does not list.",
  why: "Its terms, address, closed days and courier days are not found, and its pieces go astray in the totals.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["pieces", "requests", "lenders"],
  reads: { pieces: ["lender"], requests: ["lender"], lenders: ["lender"] },
  messages: {
    nearest:
      '"{{lender}}" ({{rows}}) is not in the lenders table, but "{{nearest}}" is. Correct the name, or add the lender.',
    unknown: '"{{lender}}" ({{rows}}) is not in the lenders table. Add the lender there, or correct the name.',
  },
  check(_workbook, report, facts) {
    const lenders = facts.lenders();
    if (lenders === null) return;
    const unlisted = facts.lenderNames().filter(({ key }) => !lenders.has(key));
    if (unlisted.length === 0) return;
    const listed = [...lenders.values()].map(({ name }) => name);
    const findNear = nearNames(listed);
    const findFuller = fullerName(listed);
    const reported = new Set<string>();
    for (const tally of unlisted) {
      // Other spellings of the same unlisted name are the business of the rule about spellings.
      if (reported.has(tally.key)) continue;
      reported.add(tally.key);
      const row = tally.rows[0]!;
      const data = { lender: tally.name, rows: sayCount(tally.rows.length, "row") };
      const near = findNear(tally.name);
      const nearest = near.length === 1 ? near[0]! : findFuller(tally.name);
      if (nearest === null) {
        report({ row, field: "lender", messageId: "unknown", data });
        continue;
      }
      const repair = rewriteNames(tally, "lender", nearest);
      const suggestions = repair === null ? [] : [repair];
      report({ row, field: "lender", messageId: "nearest", data: { ...data, nearest }, suggestions });
    }
  },
});
