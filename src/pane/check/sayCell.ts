import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { isSerialDay } from "../../domain/dates/isSerialDay";
import type { Cell } from "../../sheet/cell";

/** A cell's content as a user would recognise it; text stands in quotes, so that it shows that it is text. */
export function sayCell(cell: Cell, isDate: boolean): string {
  if (cell === null) return "blank";
  if (typeof cell === "object") return cell.error;
  if (typeof cell === "string") return `"${cell}"`;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return isDate && isSerialDay(Math.floor(cell)) ? isoFromSerial(cell) : String(cell);
}
