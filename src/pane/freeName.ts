/** The longest name a host gives a sheet. */
const LONGEST_NAME = 31;

/**
 * A name that is not taken, whatever its case, and no longer than a sheet's may be: the wanted one, else with the first number from 2 on
 * that is free behind it.
 */
export function freeName(wanted: string, taken: readonly string[], gap: string): string {
  const lower = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? "" : `${gap}${number}`;
    const name = `${wanted.slice(0, LONGEST_NAME - ending.length).trim()}${ending}`;
    if (!lower.has(name.toLowerCase())) return name;
  }
}
