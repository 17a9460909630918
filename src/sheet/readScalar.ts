import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readCell } from "./readCell";

/**
 * The number, text or truth value of one cell: text trimmed, blank (also text of spaces alone) as null,
 * an error value as the problem error-in-cell. What every coercion starts from.
 */
export function readScalar(raw: unknown, argument: string): Outcome<number | string | boolean | null> {
  const cell = readCell(raw);
  if (typeof cell === "string") {
    const text = cell.trim();
    return succeed(text === "" ? null : text);
  }
  if (typeof cell === "object" && cell !== null) return fail("error-in-cell", { argument, given: cell.error });
  return succeed(cell);
}
