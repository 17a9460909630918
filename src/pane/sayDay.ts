import { isoFromSerial } from "../domain/dates/isoFromSerial";
import { weekdayFromSerial } from "../domain/dates/weekdayFromSerial";

const WEEKDAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** A serial day as "Thu 2026-03-05", the way the cells show it with its weekday before. */
export function sayDay(serial: number): string {
  return `${WEEKDAYS[weekdayFromSerial(serial)] ?? ""} ${isoFromSerial(serial)}`;
}
