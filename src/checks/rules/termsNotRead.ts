import { sayProblem } from "../../domain/wording";
import { isUndecided } from "../../sheet/isUndecided";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

/** "tbc" is right until the piece is out, and in the other tables always. */
export const termsNotRead = defineRule({
  id: "termsNotRead",
  about: "Return terms that cannot be read, or could mean two days.",
  why: "Without the terms the due day must be worked out by hand, which is where due days go wrong.",
  severity: "warning",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "lenders", "receipts"],
  fields: { pieces: ["terms"], lenders: ["terms"], receipts: ["terms"] },
  messages: {
    notUnderstood:
      '"{{part}}" in "{{given}}" is not understood. Write for example "7 days", "3 working days" or "5 working days after shoot".',
    twoReadings: '"{{given}}" could mean {{first}} or {{second}}. Write which.',
    notUsable: "{{sentence}}",
    open: '"{{given}}" as terms of a piece that is already out. Ask the lender when it is due.',
  },
  check(row, field, report, facts) {
    const cell = cellIn(row, field);
    if (cell === null || typeof cell === "object") return;
    if (typeof cell === "string" && isUndecided(cell)) {
      const loan = row.table.kind === "pieces" ? facts.loan(row) : null;
      if (loan === null || loan.held === 0) return;
      return report({ row, field, messageId: "open", data: { given: cell.trim() } });
    }
    const read = facts.terms(cell);
    if (read.ok) return;
    const { problem } = read;
    if (problem.reason === "terms-not-understood") {
      const { given, part } = problem.facts;
      return report({ row, field, messageId: "notUnderstood", data: { given, part } });
    }
    if (problem.reason === "terms-ambiguous" || problem.reason === "date-ambiguous") {
      const { given, first, second } = problem.facts;
      // Only what can be read again is offered to be written.
      const readings = [first, second].map((text) => (problem.reason === "date-ambiguous" ? `by ${text}` : text));
      const suggestions =
        isTyped(row, field) && readings.every((text) => facts.terms(text).ok)
          ? readings.map((text) => ({ label: `Write "${text}"`, edits: [replaceCell(row, field, text)] }))
          : [];
      return report({ row, field, messageId: "twoReadings", data: { given, first, second }, suggestions });
    }
    report({ row, field, messageId: "notUsable", data: { sentence: sayProblem(problem) } });
  },
});
