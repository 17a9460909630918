import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { showGiven } from "../../domain/showGiven";
import { isUndecided } from "../../sheet/isUndecided";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { isFarOff } from "../isFarOff";
import { returnNoted } from "../returnNoted";
import { sayCount } from "../sayCount";
import { textIn } from "../textIn";

/**
 * Due on the day of the check is not late; Extended to stands in for Due. A single piece that was taken in again on no day is left to
 * the rule about that: it is the day that is missing, not the piece.
 */
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
    onItsWay:
      "Due {{due}}, {{late}} ago, and not back, though {{tracking}} is on its way. See whether it arrived, and type the day.",
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
    const isBlank = !holdsSomething(row, "back");
    if (isBlank && loan.quantity === 1 && returnNoted(row) !== null) return;
    const tracking = isBlank && holdsSomething(row, "tracking") ? textIn(row, "tracking") : null;
    if (tracking !== null && !isUndecided(tracking)) {
      return report({ row, field, messageId: "onItsWay", data: { ...data, tracking: showGiven(tracking) } });
    }
    if (loan.held === loan.quantity) return report({ row, field, messageId: "late", data });
    report({ row, field, messageId: "partLate", data: { ...data, held: loan.held, quantity: loan.quantity } });
  },
});
