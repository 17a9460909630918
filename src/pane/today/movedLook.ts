/** The keys of the looks with one of them at another place; no look comes before the `shotCount` that have been shot. */
export function movedLook(keys: readonly string[], key: string, place: number, shotCount: number): readonly string[] {
  const from = keys.indexOf(key);
  if (from < shotCount) return keys;
  const to = Math.max(shotCount, Math.min(place, keys.length - 1));
  const others = keys.filter((other) => other !== key);
  return [...others.slice(0, to), key, ...others.slice(to)];
}
