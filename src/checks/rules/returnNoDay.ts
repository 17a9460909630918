import { showGiven } from "../../domain/showGiven";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { returnNoted } from "../returnNoted";
import { textIn } from "../textIn";

/** A quantity back on no day has a rule of its own. */
export const returnNoDay = defineRule({
  id: "returnNoDay",
  about: "A condition back, or who took the piece in again, without a Back date.",
  why: "Without the day the piece counts as out and then as late, and its value stays at risk.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["out", "back"],
  messages: {
    noDay:
      '{{heading}} says "{{noted}}", but Back is blank, so the piece still counts as out. Type the day it came back.',
  },
  check(row, report, facts) {
    if (holdsSomething(row, "back") || holdsSomething(row, "quantityBack")) return;
    const loan = facts.loan(row);
    if (loan === null || loan.isSettled || loan.held === 0) return;
    const field = returnNoted(row);
    if (field === null) return;
    const heading = (row.table.headings[row.table.columnOf[field] ?? -1] ?? "").trim();
    report({
      row,
      field: "back",
      messageId: "noDay",
      data: { heading, noted: showGiven(textIn(row, field) ?? "") },
    });
  },
});
