import { readDone } from "../sheet/readDone";
import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";

/** Whether a row says under a field that something is done, or that there is nothing to do ("n/a"). */
export function isDoneWith(row: CheckedRow, field: string): boolean {
  const cell = cellIn(row, field);
  if (typeof cell === "string" && /^(?:n\/?a|none)\.?$/i.test(cell.trim())) return true;
  return readDone(cell, "") === true;
}
