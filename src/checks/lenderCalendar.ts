import type { WorkingCalendar } from "../domain/dates/workingCalendar";
import { calendarOf } from "../domain/dates/calendarOf";
import { nameKey } from "../sheet/nameKey";
import { readClosedWeekdays } from "../sheet/readClosedWeekdays";
import { cellIn } from "./cellIn";
import type { LenderBook } from "./lenderBook";
import { textIn } from "./textIn";

const SATURDAY_AND_SUNDAY = 0b1100000;
// Shops open at weekends and on holidays: common practice, no source.
const SHOP = /\b(?:shop|store|boutique|retail|department store|magasin|tienda|negozio|laden|gesch[aä]ft|kaufhaus)\b/i;

/**
 * The calendar a lender works by: its own closed weekdays where the lenders table says them, else closed on Saturday and
 * Sunday, and on the closed days that the workbook lists. A shop is open on all of them, but for weekdays of its own. null where the table says something that cannot be read, or that the lender never opens.
 */
export function lenderCalendar(
  lender: string,
  lenders: LenderBook | null,
  closedDays: readonly number[],
): WorkingCalendar | null {
  const listed = lenders?.get(nameKey(lender));
  if (listed === undefined) return calendarOf(SATURDAY_AND_SUNDAY, closedDays);
  const raw = cellIn(listed.row, "closedWeekdays");
  const closed = readClosedWeekdays(raw === 0 ? null : raw, "");
  if (!closed.ok || closed.value === 0b1111111) return null;
  const isShop = SHOP.test(textIn(listed.row, "kind") ?? "");
  return calendarOf(closed.value ?? (isShop ? 0 : SATURDAY_AND_SUNDAY), isShop ? [] : closedDays);
}
