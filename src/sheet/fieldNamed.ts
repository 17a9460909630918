import { headingVocabulary } from "./headingVocabulary";
import { readHeading } from "./readHeading";
import type { TableKind } from "./tableKind";

/** The field that a word names, by its own name or by a heading understood for it; null where it names none. */
export function fieldNamed(kind: TableKind, word: string): string | null {
  const fields = [...headingVocabulary(kind).canonical.keys()];
  const named = fields.find((field) => field.toLowerCase() === word.toLowerCase());
  return named ?? readHeading(kind, word)?.readings[0]?.field ?? null;
}
