import { fail } from "../domain/fail";
import { needed } from "../domain/needed";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readTravelMinutes } from "./readTravelMinutes";

/**
 * A square table of minutes from row to column, one row and one column for each of `names` in their order.
 *
 * The diagonal may hold anything. Problems: argument-not-usable for another size and for a figure that readTravelMinutes refuses,
 * argument-missing for a blank pair, error-in-cell.
 */
export function readMinutesBetween(
  cells: readonly (readonly unknown[])[],
  names: readonly string[],
): Outcome<readonly (readonly number[])[]> {
  const argument = "minutesBetween";
  const count = names.length;
  const width = cells[0]!.length;
  if (cells.length !== count || cells.some((row) => row.length !== count)) {
    const expected = `${count} rows and ${count} columns of minutes alone, one for each row of stops in their order`;
    return fail("argument-not-usable", { argument, given: `${cells.length} rows, ${width} columns`, expected });
  }
  const table: number[][] = [];
  for (const [from, row] of cells.entries()) {
    const minutesTo: number[] = [];
    for (const [to, raw] of row.entries()) {
      if (from === to) {
        minutesTo.push(0);
        continue;
      }
      const pair = `${argument} from ${names[from]} to ${names[to]}`;
      const minutes = needed(readTravelMinutes(raw, pair), pair, "minutes, such as 15");
      if (!minutes.ok) return minutes;
      minutesTo.push(minutes.value);
    }
    table.push(minutesTo);
  }
  return succeed(table);
}
