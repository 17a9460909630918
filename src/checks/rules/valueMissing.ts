import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { isOwnKit } from "../../sheet/isOwnKit";
import { isUndecided } from "../../sheet/isUndecided";
import { defineRule } from "../defineRule";
import { moneyIn } from "../moneyIn";
import { textIn } from "../textIn";

/** One's own pieces have no lender, or say that they are own, and need no value; a 0 counts as none, as it does in the totals. */
export const valueMissing = defineRule({
  id: "valueMissing",
  about: "A borrowed piece that is out without a value.",
  why: "It is left out of the value at risk, and is not insured for what it costs.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["out", "lender"],
  messages: {
    none: "Out since {{out}} without a value. Type what the lender's slip says it is worth.",
    open: '"{{given}}" as value of a piece that is out since {{out}}. Type what the lender\'s slip says it is worth.',
  },
  check(row, report, facts) {
    const { columnOf } = row.table;
    const fields = ["value", "totalValue"].filter((field) => columnOf[field] !== undefined);
    const field = fields[0];
    if (field === undefined) return;
    let given: string | null = null;
    for (const each of fields) {
      const reading = moneyIn(row, each);
      if (reading.is === "undecided") given = reading.given;
      else if (reading.is !== "blank" && !(reading.is === "number" && reading.amount === 0)) return;
    }
    const lender = textIn(row, "lender");
    if (lender === null || isUndecided(lender) || isOwnKit(lender)) return;
    const loan = facts.loan(row);
    if (loan === null || loan.out === null || loan.held === 0) return;
    const out = isoFromSerial(loan.out);
    if (given === null) report({ row, field, messageId: "none", data: { out } });
    else report({ row, field, messageId: "open", data: { given, out } });
  },
});
