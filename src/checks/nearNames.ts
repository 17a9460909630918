import { nameKey } from "../sheet/nameKey";
import { isLikelySlip } from "./isLikelySlip";

/**
 * A finder of the names that a name is likely a slip of.
 *
 * Two keys one slip apart become equal when a letter is left out of one or both, so names are looked up by their key with each
 * letter left out in turn: a sheet of thousands of names is not compared pair by pair.
 */
export function nearNames(names: readonly string[]): (name: string) => readonly string[] {
  const namesOf = new Map<string, string[]>();
  for (const name of names) {
    for (const variant of variantsOf(nameKey(name))) {
      const listed = namesOf.get(variant);
      if (listed === undefined) namesOf.set(variant, [name]);
      else listed.push(name);
    }
  }
  return (name) => {
    const near = new Set<string>();
    for (const variant of variantsOf(nameKey(name))) {
      for (const candidate of namesOf.get(variant) ?? []) {
        if (!near.has(candidate) && isLikelySlip(name, candidate)) near.add(candidate);
      }
    }
    return [...near];
  };
}

function variantsOf(key: string): readonly string[] {
  // A text of hundreds of letters in a name's column is a note, and no slip of anything.
  if (key.length > 60) return [];
  const variants = [key];
  for (let at = 0; at < key.length; at++) variants.push(key.slice(0, at) + key.slice(at + 1));
  return variants;
}
