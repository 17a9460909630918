import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { dateFields } from "../../sheet/dateFields";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { formulaIn } from "../formulaIn";
import { replaceCell } from "../replaceCell";

/** Figures alone (25/12/2026) that can be one day only are mended too: no other reading is a day. */
export const dateAsText = defineRule({
  id: "dateAsText",
  about: "A date that is kept as text, though it can be one day only.",
  why: "Text does not sort, filter or count as a date, so the row drops out of what is due or late.",
  severity: "warning",
  fixable: true,
  scope: "cell",
  tables: ["pieces", "requests", "looks", "day", "receipts", "stops"],
  fields: dateFields,
  messages: {
    typed: '"{{given}}" is text, not a date. Make it the date {{iso}}.',
    fromFormula: 'The formula gives "{{given}}" as text, not as a date. Let it give the date {{iso}} itself.',
  },
  check(row, field, report, facts) {
    const reading = facts.day(cellIn(row, field));
    if (reading.is !== "text") return;
    const iso = isoFromSerial(reading.day);
    const data = { given: reading.given, iso };
    if (formulaIn(row, field) !== null) return report({ row, field, messageId: "fromFormula", data });
    const fix = { label: `Make it the date ${iso}`, edits: [replaceCell(row, field, reading.day, "yyyy-mm-dd")] };
    report({ row, field, messageId: "typed", data, fix });
  },
});
