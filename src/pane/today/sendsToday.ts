import { calendarOf } from "../../domain/dates/calendarOf";
import { isProblem } from "../../domain/isProblem";
import { sendByDate } from "../../domain/loans/sendByDate";
import { quantityHeld } from "../../domain/loans/quantityHeld";
import { returnDay } from "../../domain/loans/returnDay";
import { nameKey } from "../../sheet/nameKey";
import { readClosedDaysFound } from "../../sheet/readClosedDaysFound";
import { readLenders } from "../../sheet/readLenders";
import type { SheetTable } from "../../sheet/sheetTable";
import type { ReadTables } from "../state/ReadTables";
import { heldLine } from "./heldLine";
import type { PieceTable } from "./PieceTable";
import type { SendLine, SendList } from "./SendList";

/** Saturday and Sunday, bit 0 Monday: the weekend where a function's argument is left out. */
const SATURDAY_AND_SUNDAY = 0b1100000;

/**
 * The last day to send each piece that is out, due on or after a day, and whose lender has courier days: what SENDBY
 * gives for its due date and those days, with the closed days the workbook lists.
 */
export function sendsToday(pieces: readonly PieceTable[], read: ReadTables, asOf: number): SendList {
  const closed = readClosedDaysFound(read.workbook.sheets);
  const calendar = calendarOf(SATURDAY_AND_SUNDAY, closed.days);
  const courierDaysOf = courierDaysByLender(read.tables);
  const lines: SendLine[] = [];
  for (const { table, rows } of pieces) {
    for (const row of rows) {
      const courierDays = typeof row.lender === "string" ? courierDaysOf.get(nameKey(row.lender)) : undefined;
      const quantity = quantityHeld(row, asOf);
      const due = returnDay(row);
      if (courierDays === undefined || due === null || isProblem(due) || isProblem(quantity)) continue;
      if (quantity === 0 || due < asOf) continue;
      const sendBy = sendByDate(due, courierDays, 0, calendar);
      if (sendBy.ok) lines.push({ ...heldLine(table, row, due, quantity), sendBy: sendBy.value, courierDays });
    }
  }
  lines.sort((a, b) => a.sendBy - b.sendBy);
  return { lines, closed, isAnyCourierKnown: courierDaysOf.size > 0 };
}

/** Courier days above 0, by the key that spellings of a lender share; the first row of a lender counts. */
function courierDaysByLender(tables: readonly SheetTable[]): ReadonlyMap<string, number> {
  const days = new Map<string, number>();
  for (const table of tables.filter(({ kind }) => kind === "lenders")) {
    for (const { lender, courierDays } of readLenders(table)) {
      if (typeof lender !== "string" || typeof courierDays !== "number" || courierDays < 1) continue;
      const key = nameKey(lender);
      if (!days.has(key)) days.set(key, courierDays);
    }
  }
  return days;
}
