import { CellValueType, type ICellData } from "@univerjs/core";
import type { CellEdit } from "../../sheet/cellEdit";

/** An edit as the grid's engine takes it: text stays text whatever it looks like, and nothing old shines through. */
export function writtenCell({ value, formula, numberFormat }: CellEdit): ICellData {
  const format =
    numberFormat === undefined ? {} : { s: { n: numberFormat === "General" ? null : { pattern: numberFormat } } };
  const old = { f: null, si: null, p: null };
  if (formula !== undefined) return { ...old, ...format, f: formula, v: null, t: null };
  if (value === null) return { ...old, ...format, v: null, t: null };
  if (typeof value === "number") return { ...old, ...format, v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { ...old, ...format, v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  const text = typeof value === "string" ? value : value.error;
  return {
    ...old,
    ...format,
    v: text,
    t: typeof value === "string" ? CellValueType.FORCE_STRING : CellValueType.STRING,
  };
}
