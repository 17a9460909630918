import { showCell } from "./showCell";
import type { ShownResult } from "./ShownResult";

/** Calls a function and says what its cell, or the cells it fills, would show. */
export function showResult(call: () => unknown): ShownResult {
  try {
    const result = call();
    if (isError(result)) return shownError(result);
    if (!Array.isArray(result)) return { kind: "value", text: showCell(result) };
    return { kind: "table", rows: result.map((row) => (Array.isArray(row) ? row : [row]).map(showCell)) };
  } catch (error) {
    return shownError(error);
  }
}

function isError(result: unknown): boolean {
  return result instanceof Error;
}

function shownError(error: unknown): ShownResult {
  const { message } = error as { message?: unknown };
  const sentence = typeof message === "string" && message !== "" ? message : String(error);
  return { kind: "error", code: showCell(error), sentence };
}
