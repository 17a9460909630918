import { isProblem } from "../../../domain/isProblem";
import type { FieldValue } from "../../../domain/fieldValue";

/** A field as text on paper: "" where blank, "?" where the cell cannot be read. */
export function fieldText(value: FieldValue<string>): string {
  return isProblem(value) ? "?" : (value ?? "");
}
