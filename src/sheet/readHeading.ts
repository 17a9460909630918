import { asides } from "../../shared/headings.json";
import { currencyFromText } from "./currencyFromText";
import { gramsPerUnit } from "./gramsPerUnit";
import { headingVocabulary, type FieldReading } from "./headingVocabulary";
import { headingWords } from "./headingWords";
import type { TableKind } from "./tableKind";

/** What a heading says besides its field: "Value (£)" is in pounds sterling, "Weight kg" in kilograms. null where it does not. */
export interface ColumnHint {
  readonly currency: string | null;
  /** kg, g, lb or oz in a weight; min in a duration. A duration in hours has no meaning here, since minutes are read. */
  readonly unit: string | null;
}

/** A heading with its meaning: the fields it can stand for, in the order they are tried (one, unless it gives way). */
export interface HeadingMeaning {
  readonly readings: readonly FieldReading[];
  readonly hint: ColumnHint;
}

const NO_HINT: ColumnHint = { currency: null, unit: null };
const BRACKETS = /[([{]([^)\]}]*)[)\]}]/g;
// Words in brackets that only say how to fill the column.
const HOW_TO_FILL = /^(in|per|each|piece|optional|if|any|yes|y|dd|mm|yy|yyyy|jj|aaaa|tt|am|pm|hh|approx)$/;

/**
 * The meaning of a heading in a kind of table, or null when it has none there.
 *
 * The whole heading is looked up first; then without a unit or currency in brackets; then without one at its end or start.
 * Nothing is guessed from likeness: a heading is in the vocabulary or it is not.
 */
export function readHeading(kind: TableKind, heading: string): HeadingMeaning | null {
  const whole = readWords(kind, headingWords(heading));
  if (whole !== null) return { readings: whole, hint: NO_HINT };
  const inBrackets: string[] = [];
  const outside = heading.replace(BRACKETS, (_, inside: string) => {
    inBrackets.push(...inside.split(/[\s/.-]+/).filter((word) => word !== ""));
    return " ";
  });
  if (!inBrackets.every((word) => isUnit(word) || HOW_TO_FILL.test(word.toLowerCase()))) return null;
  const words = headingWords(outside);
  const units = inBrackets.filter(isUnit);
  let readings = inBrackets.length > 0 ? readWords(kind, words) : null;
  while (readings === null && words.length > 1) {
    const last = words.at(-1)!;
    if (isUnit(last)) units.push(words.pop()!);
    else if (last === "in" && units.length > 0) words.pop();
    else if (isUnit(words[0]!) && currencyFromText(words[0]!) !== null) units.push(words.shift()!);
    else break;
    readings = readWords(kind, words);
  }
  return readings === null ? null : { readings, hint: hintFor(readings[0]!.field, units) };
}

/** The readings of a heading's words, and failing that of the same words without one that changes nothing in its field. */
function readWords(kind: TableKind, words: readonly string[]): readonly FieldReading[] | null {
  const whole = lookUp(kind, words);
  if (whole !== null || words.length < 2) return whole;
  for (const [aside, fields] of Object.entries(asides)) {
    const others = words.filter((word) => word !== aside);
    if (others.length === words.length || others.length === 0) continue;
    const allowed = fields.split(" ");
    const readings = readWords(kind, others)?.filter(({ field }) => allowed.includes(field)) ?? [];
    // "Piece no" is plainer than "Piece", which can be its description.
    if (readings.length === 1)
      return [{ field: readings[0]!.field, givesWay: readings[0]!.givesWay && aside !== "no" }];
    if (readings.length > 1) return readings;
  }
  return null;
}

function lookUp(kind: TableKind, words: readonly string[]): readonly FieldReading[] | null {
  const vocabulary = headingVocabulary(kind);
  return vocabulary.inOrder.get(words.join("")) ?? vocabulary.sorted.get([...words].sort().join(" ")) ?? null;
}

function isUnit(word: string): boolean {
  return currencyFromText(word) !== null || weightUnit(word) !== null || timeUnit(word) !== null;
}

function hintFor(field: string, units: readonly string[]): ColumnHint {
  const first = <T>(read: (word: string) => T | null): T | null =>
    units.map(read).find((unit) => unit !== null) ?? null;
  if (field === "weight" || field === "bagLimit") return { currency: null, unit: first(weightUnit) };
  return { currency: first(currencyFromText), unit: first(timeUnit) };
}

function weightUnit(word: string): string | null {
  const grams = gramsPerUnit(word);
  return grams === null ? null : grams === 1000 ? "kg" : grams === 1 ? "g" : grams > 100 ? "lb" : "oz";
}

function timeUnit(word: string): string | null {
  return /^(m|min|mins|minute|minutes|minuten|minuti|minutos|minuto|')$/i.test(word) ? "min" : null;
}
