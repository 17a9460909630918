import { common, kinds } from "../../shared/headings.json";
import { headingWords } from "./headingWords";
import type { TableKind } from "./tableKind";

/** A field a heading can mean; one that gives way counts only while no plainer heading has that field. */
export interface FieldReading {
  readonly field: string;
  readonly givesWay: boolean;
}

/** The headings of one kind of table. */
export interface KindVocabulary {
  /** Field to the heading the tool writes, in the order fields are shown. */
  readonly canonical: ReadonlyMap<string, string>;
  /** Words run together in their order to what they can mean, in the order fields are tried. */
  readonly inOrder: ReadonlyMap<string, readonly FieldReading[]>;
  /** The same words sorted, where that still means one field ("back condition"). */
  readonly sorted: ReadonlyMap<string, readonly FieldReading[]>;
}

const COMMON: Readonly<Record<string, string>> = common;

function vocabularyOf(fields: Readonly<Record<string, string>>): KindVocabulary {
  const canonical = new Map<string, string>();
  const inOrder = new Map<string, FieldReading[]>();
  const sorted = new Map<string, FieldReading[] | null>();
  for (const [field, listed] of Object.entries(fields)) {
    const phrases = listed.startsWith("+") ? (COMMON[field] ?? "") + listed.slice(1) : listed;
    for (const listedPhrase of phrases.split("|")) {
      const givesWay = listedPhrase.endsWith("?");
      const phrase = givesWay ? listedPhrase.slice(0, -1) : listedPhrase;
      if (!canonical.has(field)) canonical.set(field, phrase);
      const words = headingWords(phrase);
      const reading = { field, givesWay };
      addReading(inOrder, words.join(""), reading);
      const key = [...words].sort().join(" ");
      const known = sorted.get(key);
      const others = known?.some((other) => other.field !== field && !(other.givesWay && givesWay));
      if (known === null || others) sorted.set(key, null);
      else addReading(sorted as Map<string, FieldReading[]>, key, reading);
    }
  }
  for (const [key, readings] of sorted) if (readings === null) sorted.delete(key);
  return { canonical, inOrder, sorted: sorted as Map<string, FieldReading[]> };
}

function addReading(map: Map<string, FieldReading[]>, key: string, reading: FieldReading): void {
  const known = map.get(key);
  if (known === undefined) map.set(key, [reading]);
  else if (!known.some((other) => other.field === reading.field)) known.push(reading);
}

const KINDS = Object.fromEntries(
  Object.entries(kinds).map(([kind, fields]) => [kind, vocabularyOf(fields)]),
) as Readonly<Record<TableKind, KindVocabulary>>;

/** What the headings of a kind of table can mean, from shared/headings.json. */
export function headingVocabulary(kind: TableKind): KindVocabulary {
  return KINDS[kind];
}
