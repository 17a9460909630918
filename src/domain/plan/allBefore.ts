/** By thing: everything that must come before it, also what must come before those. Never called with a circle. */
export function allBefore(before: readonly (readonly number[])[]): Set<number>[] {
  const all = before.map((things) => new Set(things));
  // Whatever is added to a set while it is walked is walked too.
  for (const things of all) for (const thing of things) for (const earlier of before[thing]!) things.add(earlier);
  return all;
}
