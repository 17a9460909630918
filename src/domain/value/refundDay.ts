import { calendarOf } from "../dates/calendarOf";
import type { FieldValue } from "../fieldValue";
import { isProblem } from "../isProblem";
import { dueDate } from "../loans/dueDate";
import type { ReceiptRow } from "./receiptRow";

const SATURDAY_AND_SUNDAY = 0b1100000;

/**
 * The last day on which a shop refunds; null where the receipt gives no day or no terms.
 *
 * The day of the receipt is day 0 and the window is never moved, since shops open at weekends. Working days leave out
 * Saturdays and Sundays and no holidays, which are not known here: the day so found is never too late.
 */
export function refundDay({ bought, terms }: Pick<ReceiptRow, "bought" | "terms">): FieldValue<number> {
  if (terms === null || isProblem(terms)) return terms;
  if (isProblem(bought)) return bought;
  if (bought === null && terms.kind !== "date") return null;
  const day = dueDate(bought, terms, null, calendarOf(SATURDAY_AND_SUNDAY), "none");
  return day.ok ? day.value : day.problem;
}
