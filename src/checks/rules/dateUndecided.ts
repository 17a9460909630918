import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { cellIn } from "../cellIn";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

/**
 * "tbc" is right while a piece is still being arranged, so it is reported in Due only once the piece is out. In Out and Back
 * it is always reported: a blank says the same there, and a figure over the whole table stops at the word.
 */
export const dateUndecided = defineRule({
  id: "dateUndecided",
  about: 'A date that says "tbc" or the like where by now it must be a date or blank.',
  why: "Until there is a date, the piece cannot be counted as out, due or back.",
  severity: "warning",
  fixable: false,
  scope: "cell",
  tables: ["pieces"],
  fields: { pieces: ["out", "due", "extendedTo", "back"] },
  messages: {
    leaveBlank: '"{{given}}" is no date. Leave the cell blank until the day is known.',
    dueOpen: '"{{given}}" although the piece is out since {{out}}. Ask the lender for the day and type it.',
  },
  check(row, field, report, facts) {
    const reading = facts.day(cellIn(row, field));
    if (reading.is !== "undecided") return;
    const { given } = reading;
    if (field === "out" || field === "back") {
      const suggestions = isTyped(row, field)
        ? [{ label: "Clear the cell", edits: [replaceCell(row, field, null)] }]
        : [];
      return report({ row, field, messageId: "leaveBlank", data: { given }, suggestions });
    }
    // A later day agreed is open, but the day first agreed still stands.
    if (field === "extendedTo" && dayIn(row, "due") !== null) return;
    if (field === "due" && facts.day(cellIn(row, "extendedTo")).is !== "blank") return;
    const loan = facts.loan(row);
    if (loan === null || loan.out === null || loan.held === 0) return;
    report({ row, field, messageId: "dueOpen", data: { given, out: isoFromSerial(loan.out) } });
  },
});
