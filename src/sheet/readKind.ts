import { endings, headFirst, headLast } from "../../shared/garment-kinds.json";
import type { GarmentKind } from "../domain/carry/garmentKind";

interface KnownWord {
  readonly kind: GarmentKind;
  /** In English and German the last noun says what a thing is (shirt dress), in French, Spanish and Italian the first (robe chemise). */
  readonly headLast: boolean;
}

const KNOWN: ReadonlyMap<string, KnownWord> = new Map([...listWords(headFirst, false), ...listWords(headLast, true)]);
const ENDINGS: readonly (readonly [string, GarmentKind])[] = Object.entries(endings).flatMap(([kind, words]) =>
  words.split(", ").map((word) => [word, kind as GarmentKind] as const),
);
const LONGEST_PHRASE = 3;

/**
 * The kind of garment a text names ("Puffer jacket", "robe longue", "2 × shirt dress"), or null where it names none that is
 * known, or two at once ("dress and belt").
 *
 * Case, accents, numbers and plurals do not matter; what follows "with" does not either ("trousers with belt").
 */
export function readKind(text: string): GarmentKind | null {
  const plain = text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/ w\/ ?/, " with ")
    .replace(/\b(?:pull|slip)[- ]on /, "");
  let found: GarmentKind | null = null;
  for (const thing of plain.split(/[,;/&+]| and | et | y | e | und /)) {
    const kind = kindOfThing(thing.split(/ (?:with|w|avec|con|mit|for|pour|per|fur) |\(/)[0]!);
    if (kind === null) continue;
    if (found !== null && found !== kind) return null;
    found = kind;
  }
  return found;
}

function kindOfThing(thing: string): GarmentKind | null {
  const words = thing.match(/[a-z]+/g) ?? [];
  let first: KnownWord | null = null;
  let last: KnownWord | null = null;
  for (let at = 0; at < words.length;) {
    let length = Math.min(LONGEST_PHRASE, words.length - at);
    let known: KnownWord | undefined;
    for (; length > 0; length--) if ((known = knownWord(words.slice(at, at + length).join(" "))) !== undefined) break;
    if (known === undefined) at++;
    else {
      first ??= known;
      last = known;
      at += length;
    }
  }
  // A Romance noun before an English one or after it: whichever language the thing begins in decides.
  return first === null || last === null ? null : first.headLast ? last.kind : first.kind;
}

function knownWord(word: string): KnownWord | undefined {
  const known =
    KNOWN.get(word) ??
    (/[sx]$/.test(word) ? (KNOWN.get(word.slice(0, -1)) ?? KNOWN.get(word.slice(0, -2))) : undefined);
  if (known !== undefined || word.length < 6 || word.includes(" ")) return known;
  // "Lederjacke", "overdress": compounds are told by their last part.
  const ending = ENDINGS.find(
    ([part]) => word.endsWith(part) || word.endsWith(`${part}s`) || word.endsWith(`${part}es`),
  );
  return ending === undefined ? undefined : { kind: ending[1], headLast: true };
}

function listWords(words: Readonly<Record<string, string>>, headLast: boolean): (readonly [string, KnownWord])[] {
  return Object.entries(words).flatMap(([kind, list]) =>
    list.split(", ").map((word) => [word, { kind: kind as GarmentKind, headLast }] as const),
  );
}
