import { addMonths } from "../../domain/dates/addMonths";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { ymdFromSerial } from "../../domain/dates/ymdFromSerial";
import { dateFields } from "../../sheet/dateFields";
import { cellsOfRow } from "../cellsOfRow";
import type { CheckedRow } from "../checkedRow";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { formulaIn } from "../formulaIn";
import { isFarOff } from "../isFarOff";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

/** Some hosts read a typed 5/3/30 as 1930. */
const CENTURY_MONTHS = 1200;
/** Below this a number is a day of the month or a count that was typed into a date column, not a slip in the year. */
const FIRST_YEAR_SLIP = 1905;

export const dateFarOff = defineRule({
  id: "dateFarOff",
  about: "A date before 2000 or more than five years after the day of the check.",
  why: "A slip in the year makes a piece late by decades, or never due at all.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces", "requests", "looks", "day", "receipts", "stops"],
  fields: dateFields,
  messages: {
    farOff: "This date reads as {{iso}}, years away from {{asOf}}. Check the year.",
    notTypedAsDate: "{{number}} reads as the day {{iso}}. Type the whole date, like {{asOf}}.",
  },
  check(row, field, report, facts) {
    const day = dayIn(row, field);
    if (day === null || !isFarOff(day, facts.asOf) || followsFromRow(row, field, facts.asOf)) return;
    const iso = isoFromSerial(day);
    const asOf = isoFromSerial(facts.asOf);
    const { year } = ymdFromSerial(day);
    if (year < FIRST_YEAR_SLIP)
      return report({ row, field, messageId: "notTypedAsDate", data: { number: day, iso, asOf } });
    const months = [CENTURY_MONTHS, (ymdFromSerial(facts.asOf).year - year) * 12];
    const likely = months
      .map((count) => addMonths(day, count))
      .find((moved) => moved !== null && !isFarOff(moved, facts.asOf));
    const suggestions =
      likely === undefined || likely === null || !isTyped(row, field)
        ? []
        : [{ label: `Make it ${isoFromSerial(likely)}`, edits: [replaceCell(row, field, likely, "yyyy-mm-dd")] }];
    report({ row, field, messageId: "farOff", data: { iso, asOf }, suggestions });
  },
});

/** A due day worked out from an Out that is years away is mended there. */
function followsFromRow(row: CheckedRow, field: string, asOf: number): boolean {
  const formula = formulaIn(row, field);
  if (formula === null) return false;
  const columns = cellsOfRow(formula, row);
  return Object.entries(row.table.columnOf).some(([other, column]) => {
    const day = other !== field && column !== undefined && columns.includes(column) ? dayIn(row, other) : null;
    return day !== null && (dateFields[row.table.kind]?.includes(other) ?? false) && isFarOff(day, asOf);
  });
}
