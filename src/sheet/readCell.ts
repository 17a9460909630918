import type { Cell } from "./cell";

/**
 * What a host passed, as a Cell.
 *
 * Blank arrives as null, undefined or ""; a number with a format arrives as an object with basicValue;
 * an error arrives as an object with a code such as #N/A.
 */
export function readCell(raw: unknown): Cell {
  if (typeof raw === "number" || typeof raw === "boolean") return raw;
  if (raw === null || raw === undefined || raw === "") return null;
  if (typeof raw === "string") return raw;
  const held = raw as { type?: string; code?: unknown; basicValue?: unknown; error?: unknown };
  if (typeof held.error === "string") return { error: held.error };
  if (typeof held.code === "string" && held.code.startsWith("#")) return { error: held.code };
  if (held.type === "Error") return { error: String(held.basicValue ?? "#VALUE!") };
  return held.basicValue === undefined ? String(raw) : readCell(held.basicValue);
}
