import type { ColumnFormat, ResultCell } from "../domain/resultTable";
import { toHostError } from "./toHostError";

const NUMBER_FORMATS: Readonly<Record<ColumnFormat, string>> = {
  "as is": "",
  date: "yyyy-mm-dd",
  time: "[h]:mm",
  money: "#,##0.00",
};

/**
 * One result as the host wants it. Blank is "" since a returned null shows 0.
 *
 * The host's page announces once, before the first calculation, how a number can carry its format:
 * globalThis.tackstitchNumbers is "Double" or "FormattedNumber"; without it a plain number is returned.
 */
export function toHostCell(cell: ResultCell, format: ColumnFormat = "as is"): unknown {
  if (cell === null) return "";
  if (typeof cell === "object") return toHostError(cell);
  if (typeof cell !== "number") return cell;
  const pattern = format === "time" && cell >= 0 && cell < 1 ? "hh:mm" : NUMBER_FORMATS[format];
  const carrier = (globalThis as { tackstitchNumbers?: "Double" | "FormattedNumber" }).tackstitchNumbers;
  if (pattern === "" || carrier === undefined) return cell;
  return { type: carrier, basicValue: cell, numberFormat: pattern };
}
