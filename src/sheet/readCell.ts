import type { Cell } from "./cell";

/**
 * What a host passed, as a Cell.
 *
 * Blank arrives as null, undefined or ""; a number with a format arrives as an object with basicValue;
 * an error arrives as an object with a code such as #N/A; a range of one cell stands for its cell.
 * Anything else (a picture, a range of many cells) cannot be read as one value and comes back as #VALUE!.
 */
export function readCell(raw: unknown): Cell {
  if (typeof raw === "number" || typeof raw === "boolean") return raw;
  if (raw === null || raw === undefined || raw === "") return null;
  if (typeof raw === "string") return raw;
  if (typeof raw !== "object") return { error: "#VALUE!" };
  if (Array.isArray(raw)) return readOnlyCell(raw);
  const held = raw as { type?: unknown; code?: unknown; basicValue?: unknown; error?: unknown };
  if (typeof held.error === "string") return { error: held.error };
  if (typeof held.code === "string" && held.code.startsWith("#")) return { error: held.code };
  if (held.type === "Error") return { error: typeof held.basicValue === "string" ? held.basicValue : "#VALUE!" };
  if (!("basicValue" in held) || typeof held.basicValue === "object")
    return held.basicValue === null ? null : { error: "#VALUE!" };
  return readCell(held.basicValue);
}

function readOnlyCell(range: readonly unknown[]): Cell {
  const row = range[0];
  if (range.length !== 1 || !Array.isArray(row) || row.length !== 1 || Array.isArray(row[0]))
    return { error: "#VALUE!" };
  return readCell(row[0]);
}
