import { calendarOf } from "../../domain/dates/calendarOf";
import { closedWeekdaysFromCode } from "../../domain/dates/closedWeekdaysFromCode";
import { closedWeekdaysFromPattern } from "../../domain/dates/closedWeekdaysFromPattern";
import { workdayOffset } from "../../domain/dates/workdayOffset";
import { plainValue } from "./plainValue";

/** WORKDAY.INTL as its documentation says; the engine's own gives 6 when the start is a reference. */
export function workdayIntlCorrection(
  start: unknown,
  days: unknown,
  weekend?: unknown,
  holidays?: unknown[][],
): number {
  const rest = plainValue(weekend) ?? 1;
  const closedWeekdays =
    typeof rest === "string" ? closedWeekdaysFromPattern(rest) : closedWeekdaysFromCode(Number(rest));
  if (closedWeekdays === null) {
    const { invalidNumber, invalidValue } = CustomFunctions.ErrorCode;
    throw new CustomFunctions.Error(typeof rest === "string" ? invalidValue : invalidNumber);
  }
  const closed = (holidays ?? [])
    .flat()
    .map(plainValue)
    .filter((day) => typeof day === "number");
  const calendar = calendarOf(closedWeekdays, closed.map(Math.floor));
  const day = workdayOffset(Math.floor(Number(plainValue(start))), Math.trunc(Number(plainValue(days))), calendar);
  if (day === null) throw new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue);
  return day;
}
