import { nameKey } from "../sheet/nameKey";
import { isLikelySlip } from "./isLikelySlip";
import { keyWithoutAnd } from "./keyWithoutAnd";

/**
 * A finder of the names that a name is likely a slip of.
 *
 * Two keys one slip apart become equal when a letter is left out of one or both, so names are looked up by their key with each
 * letter left out in turn, and without a word for "and": a sheet of thousands of names is not compared pair by pair.
 */
export function nearNames(names: readonly string[]): (name: string) => readonly string[] {
  const namesOf = new Map<string, string[]>();
  const keyOf = new Map(names.map((name) => [name, nameKey(name)]));
  for (const [name, key] of keyOf) {
    for (const variant of variantsOf(name, key)) {
      const listed = namesOf.get(variant);
      if (listed === undefined) namesOf.set(variant, [name]);
      else listed.push(name);
    }
  }
  return (name) => {
    const key = nameKey(name);
    const compared = new Map<string, boolean>();
    for (const variant of variantsOf(name, key)) {
      for (const candidate of namesOf.get(variant) ?? []) {
        if (!compared.has(candidate)) {
          compared.set(candidate, isLikelySlip(name, candidate, key, keyOf.get(candidate)));
        }
      }
    }
    return [...compared].flatMap(([candidate, isNear]) => (isNear ? [candidate] : []));
  };
}

function variantsOf(name: string, key: string): readonly string[] {
  // A text of hundreds of letters in a name's column is a note, and no slip of anything.
  if (key.length > 60) return [];
  // A slip is never in a figure: "Studio 1" and "Studio 2" need not meet.
  const figures = `${key.replace(/\P{N}+/gu, "")} `;
  const variants = [figures + key, `&${keyWithoutAnd(name)}`];
  for (let at = 0; at < key.length; at++) variants.push(figures + key.slice(0, at) + key.slice(at + 1));
  return variants;
}
