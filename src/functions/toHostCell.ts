import type { ColumnFormat, ResultCell } from "../domain/resultTable";
import { problemIn } from "./problemIn";
import { toHostError } from "./toHostError";

const NUMBER_FORMATS: Readonly<Record<Exclude<ColumnFormat, "as is">, string>> = {
  date: "yyyy-mm-dd",
  time: "hh:mm",
  money: "#,##0.00",
};

/** hh:mm starts again at midnight; work that runs past it goes on counting. */
const PAST_MIDNIGHT = "[h]:mm";

/**
 * One result as the host wants it.
 *
 * Blank is "", since a returned null shows 0; a problem becomes an error value, which may stand in one cell
 * of a table. The host's page announces once, before the first calculation, how a number can carry its
 * format: globalThis.tackstitchNumbers is "Double" or "FormattedNumber"; without it a plain number is returned.
 */
export function toHostCell(cell: ResultCell, format: ColumnFormat = "as is"): unknown {
  if (typeof cell === "string" || typeof cell === "boolean") return cell;
  if (cell === null) return "";
  const problem = problemIn(cell);
  if (problem !== null) return toHostError(problem);
  const carrier = (globalThis as { tackstitchNumbers?: "Double" | "FormattedNumber" }).tackstitchNumbers;
  if (format === "as is" || carrier === undefined) return cell;
  const isPastMidnight = format === "time" && ((cell as number) >= 1 || (cell as number) < 0);
  return { type: carrier, basicValue: cell, numberFormat: isPastMidnight ? PAST_MIDNIGHT : NUMBER_FORMATS[format] };
}
