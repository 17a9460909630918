import { cellName } from "../sheet/cellName";
import { readClosedWeekdays } from "../sheet/readClosedWeekdays";
import type { ClosedDaysFound } from "../sheet/closedDaysFound";
import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";
import { dayIn } from "./dayIn";
import { positionIn } from "./positionIn";

const SATURDAY_AND_SUNDAY = 0b1100000;

/**
 * The formula that works out a row's due day from its own cells: =TACK.DUE(F5,G5), with the shoot day where the row has one and
 * the closed weekdays where the lender keeps others than Saturday and Sunday and the closed days that the workbook lists. Terms of the lenders table are pointed at there.
 *
 * `used`, a formula that the column already has for any row (see rowFormula), goes before it for the row's own terms: it may
 * know of closed dates that the tables do not tell.
 */
export function dueFormula(
  row: CheckedRow,
  terms: CheckedRow,
  lender: CheckedRow | null,
  used: string | null,
  closedDays: ClosedDaysFound,
): string {
  if (used !== null && terms.table === row.table) return used;
  const out = refer(row, "out");
  const termsCell = terms.table === row.table ? refer(row, "terms") : referAcross(terms, "terms");
  const shoot = dayIn(row, "shoot") === null ? "" : refer(row, "shoot");
  const weekend = lender === null ? "" : weekendOf(lender);
  const given = [out, termsCell, shoot, closedDays.place?.reference ?? "", weekend];
  while (given.at(-1) === "") given.pop();
  return `=TACK.DUE(${given.join(",")})`;
}

function refer(row: CheckedRow, field: string): string {
  const at = positionIn(row, field);
  return cellName(at.row, at.column);
}

function referAcross(row: CheckedRow, field: string): string {
  const name = refer(row, field).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
  return `'${row.table.sheetName.replaceAll("'", "''")}'!${name}`;
}

function weekendOf(lender: CheckedRow): string {
  const closed = readClosedWeekdays(cellIn(lender, "closedWeekdays"), "");
  // A lender that never opens is a slip with a finding of its own, and no calendar to count on.
  if (!closed.ok || closed.value === null || closed.value === SATURDAY_AND_SUNDAY || closed.value === 0b1111111)
    return "";
  const pattern = [0, 1, 2, 3, 4, 5, 6].map((day) => ((closed.value ?? 0) >> day) & 1).join("");
  return `"${pattern}"`;
}
