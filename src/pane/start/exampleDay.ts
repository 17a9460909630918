import { calendarOf } from "../../domain/dates/calendarOf";
import { closedWeekdaysFromCode } from "../../domain/dates/closedWeekdaysFromCode";
import { workdayOffset } from "../../domain/dates/workdayOffset";
import type { Cell } from "../../sheet/cell";

const WORK_DAY = /^work([+-]\d+)$/;

/** A cell of an example, with "work-2" as the day two working days before today. */
export function exampleDay(cell: Cell, today: number): Cell {
  const days = typeof cell === "string" ? WORK_DAY.exec(cell)?.[1] : undefined;
  const weekend = closedWeekdaysFromCode(1);
  if (days === undefined || weekend === null) return cell;
  return workdayOffset(today, Number(days), calendarOf(weekend, []));
}
