import { headingVocabulary } from "./headingVocabulary";
import { readHeading, type ColumnHint } from "./readHeading";
import type { TableKind } from "./tableKind";

/** "£", "(EUR)", "kg": a sign, a code in capitals, or a unit; a word such as "try" is no Turkish lira. */
const UNIT = /(?<![\p{L}\p{N}])(?:[£€$¥]|[A-Z]{3}|kg|g|lbs?|oz|min)(?![\p{L}\p{N}])/gu;

/** What a heading says of currency or unit that means nothing as a whole and was given its field by hand: "Ins £" is in pounds. */
export function hintOfChosen(kind: TableKind, field: string, heading: string): ColumnHint | undefined {
  const name = headingVocabulary(kind).canonical.get(field) ?? field;
  const hints = (heading.match(UNIT) ?? []).map((unit) => readHeading(kind, `${name} ${unit}`)?.hint);
  return hints.find((hint) => hint !== undefined && (hint.currency !== null || hint.unit !== null));
}
