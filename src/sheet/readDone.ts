import type { FieldValue } from "../domain/fieldValue";
import { isUndecided } from "./isUndecided";
import { readFlag } from "./readFlag";
import { readText } from "./readText";

/**
 * Whether a thing is done (a piece settled, a request collected): whatever stands in the cell says so, a word, a tick or a
 * day, unless it is a way of saying no or not yet. Blank (also 0) is null. Problem: error-in-cell.
 */
export function readDone(raw: unknown, argument: string): FieldValue<boolean> {
  const text = readText(raw, argument);
  if (!text.ok) return text.problem;
  if (text.value === null || text.value === "0") return null;
  const flag = readFlag(text.value, argument);
  return flag.ok ? flag.value !== false : !isUndecided(text.value);
}
