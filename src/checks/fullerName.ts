import { nameKey } from "../sheet/nameKey";

/** Shorter names are in too many others to say anything. */
const LEAST_LETTERS = 4;
/** A word that so many names have ("Studio") tells none of them apart. */
const MOST_WITH_ONE_WORD = 20;

/**
 * A finder of the one name that says the same as another with words more or less: "Maison Orla" for "Orla", "Halden" for
 * "Halden Press". It finds null where no name does, or several.
 */
export function fullerName(names: readonly string[]): (name: string) => string | null {
  const namesWith = new Map<string, string[]>();
  for (const name of names) {
    for (const word of new Set(wordsOf(name))) {
      const listed = namesWith.get(word);
      if (listed === undefined) namesWith.set(word, [name]);
      else listed.push(name);
    }
  }
  return (name) => {
    const words = wordsOf(name);
    const found = new Set<string>();
    for (const word of words) {
      const candidates = namesWith.get(word) ?? [];
      if (candidates.length > MOST_WITH_ONE_WORD) continue;
      for (const candidate of candidates) if (isWithin(words, wordsOf(candidate))) found.add(candidate);
    }
    return found.size === 1 ? [...found][0]! : null;
  };
}

function isWithin(words: readonly string[], others: readonly string[]): boolean {
  const [fewer, more] = words.length <= others.length ? [words, others] : [others, words];
  return fewer.join("").length >= LEAST_LETTERS && fewer.every((word) => more.includes(word));
}

function wordsOf(name: string): readonly string[] {
  return name
    .split(/[^\p{L}\p{N}\p{M}]+/u)
    .map(nameKey)
    .filter((word) => word !== "");
}
