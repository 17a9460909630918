import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { headingWords } from "./headingWords";
import { readText } from "./readText";

/** Indoors or outdoors, in any language of the headings; null for a blank, for anything else, and where a cell says both. Problem: error-in-cell. */
export function readWhere(raw: unknown, argument: string): Outcome<"indoors" | "outdoors" | null> {
  const text = readText(raw, argument);
  if (!text.ok) return text;
  const words = headingWords(text.value ?? "");
  const isInside = words.includes("inside");
  if (isInside === words.includes("outside")) return succeed(null);
  return succeed(isInside ? "indoors" : "outdoors");
}
