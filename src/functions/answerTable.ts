import type { Outcome } from "../domain/outcome";
import type { ResultTable } from "../domain/resultTable";
import { toHostCell } from "./toHostCell";
import { toHostError } from "./toHostError";

/**
 * Hands a table to the grid, heading row first, or throws the host's error with the sentence.
 *
 * The table's own rows become the answer, since a copy of 100,000 rows takes longer than finding them.
 */
export function answerTable(outcome: Outcome<ResultTable>): unknown[][] {
  if (!outcome.ok) throw toHostError(outcome.problem);
  const { headings, formats, rows } = outcome.value;
  const shown = rows as unknown as unknown[][];
  // A column of days holds few different ones, and each is an object of its own where numbers carry their format.
  const days = new Map<unknown, unknown>();
  for (let place = 0; place < shown.length; place++) {
    const row = shown[place]!;
    for (let column = 0; column < row.length; column++) {
      const cell = row[column];
      if (typeof cell === "string") continue;
      const format = formats[column];
      if (cell === null) row[column] = "";
      else if (typeof cell !== "number" || format !== "date") {
        if (typeof cell !== "number" || format !== "as is" || !Number.isFinite(cell))
          row[column] = toHostCell(cell as ResultTable["rows"][number][number], format);
      } else {
        let day = days.get(cell);
        if (day === undefined) days.set(cell, (day = toHostCell(cell, format)));
        row[column] = day;
      }
    }
  }
  return [[...headings], ...shown];
}
