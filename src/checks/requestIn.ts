import type { RequestRow } from "../domain/loans/requestRow";
import { readAnswer } from "../sheet/readAnswer";
import { readDone } from "../sheet/readDone";
import type { CheckedRow } from "./checkedRow";
import { cellIn } from "./cellIn";
import { dayIn } from "./dayIn";
import { holdsSomething } from "./holdsSomething";

/**
 * One request as the worksheet functions read it, but for text in a day: where something is answered, "yesterday" will do, and
 * any other day kept as text is no day here, since it has a finding of its own.
 */
export function requestIn(row: CheckedRow): RequestRow {
  const answered = dayIn(row, "answered") ?? (holdsSomething(row, "answered") ? 1 : null);
  return {
    row: row.row,
    asked: dayIn(row, "asked"),
    neededBy: dayIn(row, "neededBy"),
    answer: readAnswer(cellIn(row, "answer"), ""),
    answered,
    collected: readDone(cellIn(row, "collected"), ""),
  };
}
