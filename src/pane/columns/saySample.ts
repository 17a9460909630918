import { asides } from "../../../shared/headings.json";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { isSerialDay } from "../../domain/dates/isSerialDay";
import { sayClock } from "../../domain/sayClock";
import type { Cell } from "../../sheet/cell";
import { dateFields } from "../../sheet/dateFields";
import { FIRST_LIKELY_DAY } from "../../sheet/FIRST_LIKELY_DAY";
import { headingWords } from "../../sheet/headingWords";
import type { TableKind } from "../../sheet/tableKind";
import { sayCell } from "../check/sayCell";

// Fields of which a heading may say that they are dates, or times: some hold other things too, and are looked at number by number.
const dayFields = new Set(asides.date.split(" "));
const timeFields = new Set(asides.time.split(" "));

/** A cell's content as the sheet shows it most likely, by what its column is read as and, where it is not read, by its heading. */
export function saySample(cell: Cell, kind: TableKind, field: string | null, heading: string): string {
  if (typeof cell === "number") {
    const isLikelyDay = cell >= FIRST_LIKELY_DAY && isSerialDay(Math.floor(cell));
    const mayBeDay = field === null ? headingWords(heading).includes("date") : dayFields.has(field);
    if (isLikelyDay && mayBeDay) return isoFromSerial(cell);
    if (cell > 0 && cell < 1 && field !== null && timeFields.has(field)) return sayClock(cell);
  }
  return sayCell(cell, field !== null && dateFields[kind]?.includes(field) === true);
}
