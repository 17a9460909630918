import type { Outcome } from "../domain/outcome";
import type { ResultTable } from "../domain/resultTable";
import { toHostCell } from "./toHostCell";
import { toHostError } from "./toHostError";

/** Hands a table to the grid, heading row first, or throws the host's error with the sentence. */
export function answerTable(outcome: Outcome<ResultTable>): unknown[][] {
  if (!outcome.ok) throw toHostError(outcome.problem);
  const { headings, formats, rows } = outcome.value;
  return [[...headings], ...rows.map((row) => row.map((cell, column) => toHostCell(cell, formats[column])))];
}
