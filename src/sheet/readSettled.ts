import type { FieldValue } from "../domain/fieldValue";
import { readFlag } from "./readFlag";
import { readText } from "./readText";

/**
 * Whether a piece is settled (lost, bought, gifted): whatever stands in the cell says so, a word, a tick or
 * a day, unless it is a way of saying no. Blank (also 0) is null. Problem: error-in-cell.
 */
export function readSettled(raw: unknown, argument: string): FieldValue<boolean> {
  const text = readText(raw, argument);
  if (!text.ok) return text.problem;
  if (text.value === null || text.value === "0") return null;
  const flag = readFlag(text.value, argument);
  return !flag.ok || flag.value !== false;
}
