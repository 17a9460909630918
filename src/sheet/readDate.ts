import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readDateTime } from "./readDateTime";

/**
 * A whole serial day from a serial number, ISO text or text with a named month; a time of day is cut off.
 *
 * Blank (also 0) is null; bounds and problems as for readDateTime.
 */
export function readDate(raw: unknown, argument: string): Outcome<number | null> {
  // The common case first: a whole table is read cell by cell.
  if (typeof raw === "number" && raw >= 1 && raw < 2958466) return succeed(Math.floor(raw));
  if (raw === null || raw === undefined) return succeed(null);
  const moment = readDateTime(raw, argument);
  return moment.ok && moment.value !== null ? succeed(Math.floor(moment.value)) : moment;
}
