import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { dateFields } from "../../sheet/dateFields";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { formulaIn } from "../formulaIn";
import { replaceCell } from "../replaceCell";

/** Day first or month first cannot be told from the sheet, so nothing is chosen for the user. */
export const dateTwoReadings = defineRule({
  id: "dateTwoReadings",
  about: "A date typed in figures that could be two days.",
  why: "Read the wrong way round, a piece comes back weeks late.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "requests", "looks", "day", "receipts", "stops"],
  fields: dateFields,
  messages: {
    twoDays: '"{{given}}" could be {{first}} or {{second}}. Choose which.',
  },
  check(row, field, report, facts) {
    const reading = facts.day(cellIn(row, field));
    if (reading.is !== "two days") return;
    const first = isoFromSerial(reading.first);
    const second = isoFromSerial(reading.second);
    const suggestions =
      formulaIn(row, field) !== null
        ? []
        : [
            { label: `Make it ${first}`, edits: [replaceCell(row, field, reading.first, "yyyy-mm-dd")] },
            { label: `Make it ${second}`, edits: [replaceCell(row, field, reading.second, "yyyy-mm-dd")] },
          ];
    report({ row, field, messageId: "twoDays", data: { given: reading.given, first, second }, suggestions });
  },
});
