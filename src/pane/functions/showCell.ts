import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { isSerialDay } from "../../domain/dates/isSerialDay";
import { sayClock } from "../../domain/sayClock";

/** One cell of a result as a cell of the sheet would show it; a function returns a value, a number with its format, or an error. */
export function showCell(cell: unknown): string {
  if (typeof cell === "string") return cell;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  if (typeof cell === "number") return showNumber(cell);
  if (typeof cell !== "object" || cell === null) return "0";
  const held = cell as { basicValue?: unknown; numberFormat?: string; code?: unknown; message?: unknown };
  if (typeof held.basicValue === "number") return showFormatted(held.basicValue, held.numberFormat ?? "");
  if (held.basicValue !== undefined) return showCell(held.basicValue);
  return typeof held.code === "string" && held.code.startsWith("#") ? held.code : "#VALUE!";
}

function showFormatted(value: number, format: string): string {
  if (/y.*m.*d/i.test(format) && isSerialDay(Math.floor(value))) return isoFromSerial(Math.floor(value));
  if (/^\[?h/i.test(format)) return sayClock(value);
  const decimals = /^[#,0]*0\.(0+)$/.exec(format)?.[1]?.length;
  if (decimals === undefined) return showNumber(value);
  return value.toLocaleString("en-GB", { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
}

/** As a cell without a format does: not more digits than fit. */
function showNumber(value: number): string {
  return String(Number(value.toPrecision(10)));
}
