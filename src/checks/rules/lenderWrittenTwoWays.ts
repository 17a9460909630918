import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import type { NameTally } from "../nameTally";
import { rewriteNames } from "../rewriteNames";
import { sayCount } from "../sayCount";

/** The functions read such spellings as one lender, so writing one of them everywhere changes no figure: a fix, not a suggestion. */
export const lenderWrittenTwoWays = defineRule({
  id: "lenderWrittenTwoWays",
  about: "One lender written in two ways that differ in case, accents, punctuation or spacing.",
  why: "Filters and pivot tables show the lender twice, though the totals here count it once.",
  severity: "note",
  fixable: true,
  scope: "workbook",
  tables: ["pieces", "requests", "lenders"],
  reads: { pieces: ["lender"], requests: ["lender"], lenders: ["lender"] },
  messages: {
    written: '"{{lender}}" ({{rows}}) is written "{{usual}}" elsewhere. Write it one way.',
  },
  check(_workbook, report, facts) {
    const lenders = facts.lenders();
    const spellings = new Map<string, NameTally[]>();
    for (const tally of facts.lenderNames()) {
      const others = spellings.get(tally.key);
      if (others === undefined) spellings.set(tally.key, [tally]);
      else others.push(tally);
    }
    for (const [key, tallies] of spellings) {
      // Sorting is stable: of equally common spellings the first one seen stays first.
      const usual = lenders?.get(key)?.name ?? [...tallies].sort((a, b) => b.rows.length - a.rows.length)[0]!.name;
      for (const tally of tallies) {
        // A cell with stray spaces has that finding first, so that no two fixes write one cell.
        const rows = tally.rows.filter((row) => cellIn(row, "lender") === tally.name);
        if (tally.name === usual || rows.length === 0) continue;
        const fix = rewriteNames({ ...tally, rows }, "lender", usual);
        report({
          row: rows[0]!,
          field: "lender",
          messageId: "written",
          data: { lender: tally.name, rows: sayCount(rows.length, "row"), usual },
          ...(fix === null ? {} : { fix }),
        });
      }
    }
  },
});
