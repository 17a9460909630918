import { sayTerms } from "../../domain/dates/terms/sayTerms";
import type { Terms } from "../../domain/dates/terms/terms";
import { nameKey } from "../../sheet/nameKey";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { dueFormula } from "../dueFormula";
import { holdsSomething } from "../holdsSomething";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";
import { rowFormula } from "../rowFormula";
import { textIn } from "../textIn";

/** A piece with no terms anywhere has no due day yet, and that is right: the lender has not said. */
export const dueMissing = defineRule({
  id: "dueMissing",
  about: "A piece with an Out date and terms, its own or its lender's, but no due day.",
  why: "Terms alone are not counted from in the totals: without a due day a piece is never late.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["lenders", "pieces", "notes"],
  // Of the other pieces only the formula of the Due column is consulted.
  reads: { pieces: ["due"], notes: ["closedDays"] },
  needs: ["out", "due"],
  messages: {
    fromRow: "Due is blank, though the terms say {{terms}}. Let the formula work it out, or type the day.",
    fromLender: "Due is blank, though {{lender}} lends for {{terms}}. Let the formula work it out, or type the day.",
    needsShoot: "Due is blank, and the terms say {{terms}}. Type the shoot day in this row, or the due day.",
  },
  check(row, report, facts) {
    if (holdsSomething(row, "due") || holdsSomething(row, "extendedTo") || !isTyped(row, "due")) return;
    const loan = facts.loan(row);
    if (loan === null || loan.out === null || loan.isSettled || loan.back !== null) return;
    const found = termsFor(row, facts);
    if (found === null) return;
    const terms = sayTerms(found.terms);
    if ("from" in found.terms && found.terms.from === "shoot" && dayIn(row, "shoot") === null) {
      // A shoot day that is there but cannot be read has a finding of its own.
      if (!holdsSomething(row, "shoot")) report({ row, field: "due", messageId: "needsShoot", data: { terms } });
      return;
    }
    const lender = textIn(row, "lender");
    const listed = lender === null ? undefined : facts.lenders()?.get(nameKey(lender));
    const { table } = row;
    const used = facts.once("row formula", `${table.sheetId} ${table.firstRow} ${table.firstColumn}`, () =>
      rowFormula(table, "due"),
    );
    const formula = dueFormula(row, found.source, listed?.row ?? null, used, facts.notes.closedDays);
    const edit = { ...replaceCell(row, "due", null, "yyyy-mm-dd"), formula };
    const suggestions = [{ label: `Write ${formula}`, edits: [edit] }];
    if (found.source.table === row.table)
      return report({ row, field: "due", messageId: "fromRow", data: { terms }, suggestions });
    report({ row, field: "due", messageId: "fromLender", data: { lender: lender ?? "", terms }, suggestions });
  },
});

/** The row's own terms, else its lender's; null where there are none or they cannot be read. */
function termsFor(row: CheckedRow, facts: CheckFacts): { readonly terms: Terms; readonly source: CheckedRow } | null {
  const own = facts.terms(cellIn(row, "terms"));
  if (!own.ok) return null;
  if (own.value !== null) return { terms: own.value, source: row };
  const lender = textIn(row, "lender");
  const listed = lender === null ? undefined : facts.lenders()?.get(nameKey(lender));
  if (listed === undefined) return null;
  const terms = facts.terms(cellIn(listed.row, "terms"));
  return terms.ok && terms.value !== null ? { terms: terms.value, source: listed.row } : null;
}
