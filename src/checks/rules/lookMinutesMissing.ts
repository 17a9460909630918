import type { SheetTable } from "../../sheet/sheetTable";
import type { CheckedRow } from "../checkedRow";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { textIn } from "../textIn";

/** A typed 0 is an answer. Reported once at least half of the looks have theirs: before that the day is still being timed. */
export const lookMinutesMissing = defineRule({
  id: "lookMinutesMissing",
  about: "A look without shooting or change minutes, when most others have theirs.",
  why: "It counts as no time at all, so the day looks shorter than it is.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["looks"],
  needs: ["look"],
  messages: {
    shooting: "Look {{look}} has no shooting minutes, so it counts as none. Type how long it takes.",
    change: "Look {{look}} has no change minutes, so it counts as none. Type how long the change takes.",
  },
  check(table, report) {
    const rows = table.dataRows.map((row) => ({ table, row })).filter((row) => textIn(row, "look") !== null);
    for (const field of ["shooting", "change"] as const) {
      if (table.columnOf[field] === undefined) continue;
      const without = rows.filter((row) => hasNoMinutes(table, row, field));
      if (without.length * 2 > rows.length) continue;
      for (const row of without)
        report({ row, field, messageId: field, data: { look: lookName(textIn(row, "look") ?? "") } });
    }
  },
});

/** Change falls back on Likely. */
function hasNoMinutes(table: SheetTable, row: CheckedRow, field: "shooting" | "change"): boolean {
  if (cellIn(row, field) !== null) return false;
  return field === "shooting" || table.columnOf["likely"] === undefined || cellIn(row, "likely") === null;
}
