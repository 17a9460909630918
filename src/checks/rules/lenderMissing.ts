import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { isUndecided } from "../../sheet/isUndecided";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { textIn } from "../textIn";

/** A piece of one's own kit has no lender and no day out; a piece that is out belongs to somebody. */
export const lenderMissing = defineRule({
  id: "lenderMissing",
  about: "A piece that is out with no lender.",
  why: "Nobody can say whom it goes back to, and it is missing from that lender's totals.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["lender", "out"],
  messages: {
    none: "Out since {{out}} with no lender. Type whose it is.",
    open: '"{{given}}" as lender of a piece that is out since {{out}}. Type whose it is.',
  },
  check(row, report, facts) {
    const lender = textIn(row, "lender");
    const isOpen = lender !== null && isUndecided(lender);
    if (!isOpen && cellIn(row, "lender") !== null) return;
    const loan = facts.loan(row);
    if (loan === null || loan.out === null || loan.held === 0) return;
    const out = isoFromSerial(loan.out);
    if (isOpen) report({ row, field: "lender", messageId: "open", data: { given: lender, out } });
    else report({ row, field: "lender", messageId: "none", data: { out } });
  },
});
