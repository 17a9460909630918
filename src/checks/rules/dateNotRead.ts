import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { cellName } from "../../sheet/cellName";
import { dateFields } from "../../sheet/dateFields";
import { readRefunded } from "../../sheet/readRefunded";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { cellIn } from "../cellIn";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { dayIn } from "../dayIn";
import { dayWithoutYear } from "../dayWithoutYear";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { positionIn } from "../positionIn";
import { replaceCell } from "../replaceCell";

export const dateNotRead = defineRule({
  id: "dateNotRead",
  about: "Something in a date column that is no date.",
  why: "A row without a date that can be read is neither due nor late nor back.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "requests", "looks", "day", "receipts", "stops"],
  uses: ["notes"],
  reads: { notes: ["closedDays"] },
  fields: dateFields,
  messages: {
    noDay: '"{{given}}" is not a date. Type it like 2026-03-05 or 5 Mar 2026.',
    noYear: '"{{given}}" names no year. Type it with its year, such as {{likely}}.',
    terms: '"{{given}}" is a span and no day. Let the formula count it, or type the day.',
    wrongWeekday: '"{{given}}" names a weekday that is not that date\'s. Give {{expected}}.',
    backNoDay: '"{{given}}" does not say when it came back. Type the day, like 2026-03-05.',
  },
  check(row, field, report, facts) {
    const reading = facts.day(cellIn(row, field));
    if (reading.is === "wrong weekday") {
      report({ row, field, messageId: "wrongWeekday", data: { given: reading.given, expected: reading.expected } });
    } else if (reading.is === "no day") {
      // What is due at a stop may be due at a time of that day.
      if (row.table.kind === "stops" && readTimeOfDay(cellIn(row, field), "").ok) return;
      // A refund may be said without its day.
      if (field === "refunded" && readRefunded(cellIn(row, field), "").ok) return;
      const { given } = reading;
      const day = dayWithoutYear(given, facts.asOf, field === "out" ? null : dayIn(row, "out"));
      if (day !== null) {
        const likely = isoFromSerial(day);
        const edits = [replaceCell(row, field, day, "yyyy-mm-dd")];
        const suggestions = isTyped(row, field) ? [{ label: `Make it ${likely}`, edits }] : [];
        return report({ row, field, messageId: "noYear", data: { given, likely }, suggestions });
      }
      const formula = field === "due" ? countedDue(row, facts) : null;
      if (formula !== null) {
        const edits = [{ ...replaceCell(row, field, null, "yyyy-mm-dd"), formula }];
        const suggestions = [{ label: `Write ${formula}`, edits }];
        return report({ row, field, messageId: "terms", data: { given }, suggestions });
      }
      const messageId = field === "back" ? "backNoDay" : "noDay";
      report({ row, field, messageId, data: { given } });
    }
  },
});

/** The formula for a Due cell that holds terms ("7 days", "by Friday") and not the day they come to; null where they need more than the row's Out. */
function countedDue(row: CheckedRow, facts: CheckFacts): string | null {
  const held = cellIn(row, "due");
  const terms = facts.terms(held);
  if (typeof held !== "string" || !terms.ok || terms.value === null || terms.value.kind === "date") return null;
  if (!isTyped(row, "due") || dayIn(row, "out") === null || ("from" in terms.value && terms.value.from === "shoot"))
    return null;
  const out = positionIn(row, "out");
  const closed = facts.notes.closedDays.place?.reference;
  const quoted = `"${held.trim().replaceAll('"', '""')}"`;
  return `=TACK.DUE(${cellName(out.row, out.column)},${quoted}${closed === undefined ? "" : `,,${closed}`})`;
}
