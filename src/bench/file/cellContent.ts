import type { CellValue as FileValue } from "@cj-tech-master/excelts";
import { CellValueType, type ICellData } from "@univerjs/core";
import { engineFormula } from "./engineFormula";

const DAY_MS = 86_400_000;
/** Serial 25569 is 1970-01-01 in the 1900 system; the reader counts in plain days, also before March 1900. */
const EPOCH_SERIAL = 25_569;
/** Days between the two date systems, ISO/IEC 29500-1 18.17.4.1. */
const DAYS_TO_1904 = 1_462;

/** What stands in a cell of the file as the grid keeps it; dates as the serial numbers of the workbook's own system. */
export function cellContent(value: FileValue, dateSystem: 1900 | 1904): ICellData {
  if (value === null || value === undefined) return {};
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === "string") return { v: value, t: CellValueType.STRING };
  if (value instanceof Date) {
    const days = (value.getTime() + EPOCH_SERIAL * DAY_MS) / DAY_MS;
    return { v: dateSystem === 1904 ? days - DAYS_TO_1904 : days, t: CellValueType.NUMBER };
  }
  if ("formula" in value && typeof value.formula === "string") {
    return { f: engineFormula(value.formula), ...cellContent(value.result ?? null, dateSystem) };
  }
  if ("sharedFormula" in value) return cellContent(value.result ?? null, dateSystem);
  if ("error" in value) return { v: value.error, t: CellValueType.STRING };
  if ("richText" in value) return text(value.richText.map((run) => run.text).join(""));
  if ("checkbox" in value) return { v: value.checkbox ? 1 : 0, t: CellValueType.BOOLEAN };
  if ("hyperlink" in value) {
    const shown: unknown = value.text;
    return typeof shown === "object" ? cellContent(shown as FileValue, dateSystem) : text(String(shown ?? ""));
  }
  return {};
}

function text(shown: string): ICellData {
  return { v: shown, t: CellValueType.STRING };
}
