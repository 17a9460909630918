import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readCell } from "./readCell";

/**
 * The number, text or truth value of one cell: text trimmed, blank (also text of spaces alone) as null,
 * an error value as the problem error-in-cell, a range of several cells as argument-not-usable. What every coercion starts from.
 */
export function readScalar(raw: unknown, argument: string): Outcome<number | string | boolean | null> {
  const cell = readCell(raw);
  if (typeof cell === "string") {
    const text = cell.trim();
    return succeed(text === "" ? null : text);
  }
  if (typeof cell !== "object" || cell === null) return succeed(cell);
  if (isSeveral(raw)) return fail("argument-not-usable", { argument, given: "several cells", expected: "one cell" });
  return fail("error-in-cell", { argument, given: cell.error });
}

function isSeveral(raw: unknown): boolean {
  return Array.isArray(raw) && (raw.length > 1 || (Array.isArray(raw[0]) && raw[0].length > 1));
}
