import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { isFarOff } from "../isFarOff";
import { sayCount } from "../sayCount";

/** Due on the day of the check is not late; Extended to stands in for Due. */
export const lateNotBack = defineRule({
  id: "lateNotBack",
  about: "A piece past its due day that is not back.",
  why: "A late piece costs a fee, or its price, and the lender's goodwill.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["out"],
  messages: {
    late: "Due {{due}}, {{late}} ago, and not back. Return it, or type the day it came back.",
    partLate:
      "Due {{due}}, {{late}} ago, and {{held}} of {{quantity}} still out. Return the rest, or correct Quantity back.",
  },
  check(row, report, facts) {
    const loan = facts.loan(row);
    if (loan === null || loan.out === null || loan.held === 0) return;
    const field = holdsSomething(row, "extendedTo") ? "extendedTo" : "due";
    const due = dayIn(row, field);
    if (due === null || due >= facts.asOf || due < loan.out || isFarOff(due, facts.asOf)) return;
    if (isFarOff(loan.out, facts.asOf)) return;
    const data = { due: isoFromSerial(due), late: sayCount(facts.asOf - due, "day") };
    if (loan.held === loan.quantity) return report({ row, field, messageId: "late", data });
    report({ row, field, messageId: "partLate", data: { ...data, held: loan.held, quantity: loan.quantity } });
  },
});
