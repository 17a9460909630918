import { calendarOf } from "../domain/dates/calendarOf";
import { closedWeekdaysFromCode } from "../domain/dates/closedWeekdaysFromCode";
import { closedWeekdaysFromPattern } from "../domain/dates/closedWeekdaysFromPattern";
import { lastSerial } from "../domain/dates/lastSerial";
import type { WorkingCalendar } from "../domain/dates/workingCalendar";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readDate } from "./readDate";
import { readScalar } from "./readScalar";

const SATURDAY_AND_SUNDAY = 0b1100000;

/**
 * The working calendar of the arguments `closed` and `weekend`.
 *
 * `closed`: a range of dates in any order, or one date; blank cells are passed over, a cell that is no date is a problem that
 * names its row. Below a row of headings (words without a figure, and nothing else) the dates are those of the first column,
 * so that a table of dates and names, such as HOLIDAYS gives, can be passed as it is. `weekend`: a code as a number (1 to 7, 11 to 17) or seven characters of 0 and 1, Monday first, as text;
 * blank, also 0, is Saturday and Sunday. All seven days closed is a calendar, on which nothing can be due.
 * Problems: those of readDate, argument-not-usable, error-in-cell.
 */
export function readCalendar(closed: unknown, weekend: unknown): Outcome<WorkingCalendar> {
  const closedWeekdays = readWeekend(weekend);
  if (!closedWeekdays.ok) return closedWeekdays;
  if (closed === undefined || closed === null) return succeed(calendarOf(closedWeekdays.value));
  const days: number[] = [];
  const rows: readonly unknown[] = Array.isArray(closed) ? closed : [closed];
  const isHeaded = rows.length + (rows[0] as unknown[])?.length > 2 && isHeadingRow(rows[0]);
  for (let row = isHeaded ? 1 : 0; row < rows.length; row++) {
    const cells = rows[row];
    if (!Array.isArray(cells)) {
      const problem = addClosedDay(days, cells, "closed");
      if (problem !== null) return problem;
    } else
      for (let column = 0; column < (isHeaded ? 1 : cells.length); column++) {
        const raw: unknown = cells[column];
        // A range of holidays is read anew in every row of the sheet, so the plain number takes the short way, and one on a closed weekday no further.
        if (typeof raw === "number" && raw >= 1 && raw < lastSerial + 1) {
          const day = Math.floor(raw);
          if (!((closedWeekdays.value >> ((day + 5) % 7)) & 1)) days.push(day);
        } else if (raw !== null && raw !== undefined && raw !== 0 && raw !== "") {
          const problem = addClosedDay(days, raw, `closed, row ${row + 1}`);
          if (problem !== null) return problem;
        }
      }
  }
  return succeed(calendarOf(closedWeekdays.value, days));
}

function isHeadingRow(row: unknown): boolean {
  // Nearly every list begins with a date, which is settled at once.
  if (!Array.isArray(row) || typeof row[0] === "number") return false;
  const texts = row.filter((cell) => cell !== null && cell !== undefined && cell !== "");
  return texts.length > 0 && texts.every((cell) => typeof cell === "string" && /^\D*\p{L}\D*$/u.test(cell));
}

/** Adds the day where the cell holds one, and gives the problem where it holds anything else. */
function addClosedDay(days: number[], raw: unknown, argument: string): Outcome<never> | null {
  const day = readDate(raw, argument);
  if (!day.ok) return day;
  if (day.value !== null) days.push(day.value);
  return null;
}

function readWeekend(weekend: unknown): Outcome<number> {
  if (weekend === undefined || weekend === null) return succeed(SATURDAY_AND_SUNDAY);
  const scalar = readScalar(weekend, "weekend");
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || value === 0) return succeed(SATURDAY_AND_SUNDAY);
  const closedWeekdays =
    typeof value === "number"
      ? closedWeekdaysFromCode(value)
      : typeof value === "string"
        ? closedWeekdaysFromPattern(value)
        : null;
  if (closedWeekdays !== null) return succeed(closedWeekdays);
  const expected =
    'a code 1 to 7 or 11 to 17 as a number, or seven characters of 0 and 1 as text, Monday first, such as "0000011"';
  return fail("argument-not-usable", { argument: "weekend", given: showGiven(value), expected });
}
