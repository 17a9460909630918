/** A name that is not taken, whatever its case: the wanted one, else with the first number from 2 on that is free. */
export function freeName(wanted: string, taken: readonly string[], gap: string): string {
  const lower = new Set(taken.map((name) => name.toLowerCase()));
  if (!lower.has(wanted.toLowerCase())) return wanted;
  let number = 2;
  while (lower.has(`${wanted}${gap}${number}`.toLowerCase())) number += 1;
  return `${wanted}${gap}${number}`;
}
