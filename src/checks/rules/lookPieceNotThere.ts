import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { isOwnKit } from "../../sheet/isOwnKit";
import { whyNotThere } from "../../domain/loans/whyNotThere";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { isFarOff } from "../isFarOff";
import { listedRow } from "../listedRow";
import { lookName } from "../lookName";
import { textIn } from "../textIn";

/** The day is the look's Date, else the piece's Shoot. A piece is no longer held on its Back day. */
export const lookPieceNotThere = defineRule({
  id: "lookPieceNotThere",
  about: "A piece of a look that is not yet out, already back or due back before the day the look is shot.",
  why: "The look is called and a piece of it is not on the rail.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["looks"],
  needs: ["look"],
  messages: {
    notYetOut:
      "Look {{look}} is shot on {{day}}, but the piece goes out only on {{out}}. Collect it earlier, or correct the day.",
    alreadyBack:
      "Look {{look}} is shot on {{day}}, but the piece is back on {{back}}. Keep it longer, or correct the day.",
    dueBefore: "Look {{look}} is shot on {{day}}, but the piece is due back on {{due}}. Ask the lender to extend it.",
    neverOut: "Look {{look}} was shot on {{day}}, but the piece has no Out date. Type the day it went out.",
  },
  check(row, report, facts) {
    const named = facts.looksOf(row);
    if (named.length === 0) return;
    const loan = facts.loan(row);
    if (loan === null || loan.isSettled) return;
    const { out, back } = loan;
    const due = dayIn(row, holdsSomething(row, "extendedTo") ? "extendedTo" : "due");
    // Dates that cannot be have a finding of their own.
    if ([out, back, due].some((day) => day !== null && isFarOff(day, facts.asOf))) return;
    if (out !== null && ((back !== null && back < out) || (due !== null && due < out))) return;
    for (const { name, key } of named) {
      const listed = listedRow(key, row, facts);
      const day = (listed === null ? null : dayIn(listed, "date")) ?? dayIn(row, "shoot");
      if (day === null || isFarOff(day, facts.asOf)) continue;
      const data = { look: lookName(name), day: isoFromSerial(day) };
      const why = whyNotThere({ ...loan, settled: false }, day);
      if (why === "out later" && out !== null) {
        return report({ row, field: "out", messageId: "notYetOut", data: { ...data, out: isoFromSerial(out) } });
      }
      if (why === "already back" && back !== null) {
        return report({ row, field: "back", messageId: "alreadyBack", data: { ...data, back: isoFromSerial(back) } });
      }
      // Once the day is past, what was due before it is late or back, and is reported so.
      if (due !== null && due < day && day >= facts.asOf && due >= facts.asOf && back === null) {
        const field = holdsSomething(row, "extendedTo") ? "extendedTo" : "due";
        return report({ row, field, messageId: "dueBefore", data: { ...data, due: isoFromSerial(due) } });
      }
      if (why === "never out" && day < facts.asOf && isBorrowed(row) && row.table.columnOf["out"] !== undefined) {
        return report({ row, field: "out", messageId: "neverOut", data });
      }
    }
  },
});

function isBorrowed(row: CheckedRow): boolean {
  const lender = textIn(row, "lender");
  return lender !== null && !isOwnKit(lender);
}
