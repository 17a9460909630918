import { dateFields } from "../../sheet/dateFields";
import { readRefunded } from "../../sheet/readRefunded";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

export const dateNotRead = defineRule({
  id: "dateNotRead",
  about: "Something in a date column that is no date.",
  why: "A row without a date that can be read is neither due nor late nor back.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "requests", "looks", "day", "receipts", "stops"],
  fields: dateFields,
  messages: {
    noDay: '"{{given}}" is not a date. Type it like 2026-03-05 or 5 Mar 2026.',
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
      const messageId = field === "back" ? "backNoDay" : "noDay";
      report({ row, field, messageId, data: { given: reading.given } });
    }
  },
});
