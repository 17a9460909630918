import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { isFarOff } from "../isFarOff";

/** Dates that are years away are left to the rule about them: the year is the slip, not the order. */
export const datesOutOfOrder = defineRule({
  id: "datesOutOfOrder",
  about: "Dates of one row that cannot follow each other: back or due before out, refunded before bought.",
  why: "Days held, days late and the value at risk are counted between these dates.",
  severity: "error",
  fixable: false,
  scope: "row",
  tables: ["pieces", "requests", "receipts"],
  needs: [],
  messages: {
    outAfterAll: "Out {{out}} is after both Due {{due}} and Back {{back}}. Correct the day it went out.",
    backBeforeOut: "Back {{back}} is before Out {{out}}. Correct whichever is wrong.",
    dueBeforeOut: "Due {{due}} is before Out {{out}}. Correct whichever is wrong.",
    extendedBeforeDue: "Extended to {{extended}} is before Due {{due}}. Correct whichever is wrong.",
    answeredBeforeAsked: "Answered {{answered}} is before Asked {{asked}}. Correct whichever is wrong.",
    refundedBeforeBought: "Refunded {{refunded}} is before Bought {{bought}}. Correct whichever is wrong.",
  },
  check(row, report, facts) {
    const likely = (field: string): number => likelyDay(row, field, facts.asOf);
    if (row.table.kind === "requests") {
      const [asked, answered] = [likely("asked"), likely("answered")];
      if (answered < asked) {
        const data = { asked: isoFromSerial(asked), answered: isoFromSerial(answered) };
        report({ row, field: "answered", messageId: "answeredBeforeAsked", data });
      }
      return;
    }
    if (row.table.kind === "receipts") {
      const [bought, refunded] = [likely("bought"), likely("refunded")];
      if (refunded < bought) {
        const data = { bought: isoFromSerial(bought), refunded: isoFromSerial(refunded) };
        report({ row, field: "refunded", messageId: "refundedBeforeBought", data });
      }
      return;
    }
    const out = likely("out");
    const due = likely("due");
    const back = likely("back");
    const extended = likely("extendedTo");
    if (due < out && back < out) {
      const data = { out: isoFromSerial(out), due: isoFromSerial(due), back: isoFromSerial(back) };
      return report({ row, field: "out", messageId: "outAfterAll", data });
    }
    if (back < out) {
      report({
        row,
        field: "back",
        messageId: "backBeforeOut",
        data: { back: isoFromSerial(back), out: isoFromSerial(out) },
      });
    }
    if (due < out) {
      report({
        row,
        field: "due",
        messageId: "dueBeforeOut",
        data: { due: isoFromSerial(due), out: isoFromSerial(out) },
      });
    }
    if (extended < due) {
      const data = { extended: isoFromSerial(extended), due: isoFromSerial(due) };
      report({ row, field: "extendedTo", messageId: "extendedBeforeDue", data });
    }
  },
});

/** NaN, which is before and after nothing, where there is no date or an unlikely one. */
function likelyDay(row: CheckedRow, field: string, asOf: number): number {
  const day = dayIn(row, field);
  return day === null || isFarOff(day, asOf) ? NaN : day;
}
