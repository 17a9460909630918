import type { Outcome } from "../domain/outcome";
import type { ResultTable } from "../domain/resultTable";
import { toHostCell } from "./toHostCell";
import { toHostError } from "./toHostError";

/** Hands a table to the grid, heading row first, or throws the host's error with the sentence. */
export function answerTable(outcome: Outcome<ResultTable>): unknown[][] {
  if (!outcome.ok) throw toHostError(outcome.problem);
  const { headings, formats, rows } = outcome.value;
  const shown: unknown[][] = [[...headings]];
  for (const row of rows) {
    const cells = new Array<unknown>(row.length);
    for (let column = 0; column < row.length; column++) cells[column] = toHostCell(row[column]!, formats[column]);
    shown.push(cells);
  }
  return shown;
}
