/**
 * The row (or column) that something lying over a sheet belongs to: the first of which it covers at least half, since a
 * picture put down by hand often begins a little above its own row; of two that it covers less of, the one it covers more of.
 *
 * @param start Where it begins, from the sheet's edge, 0 or more.
 * @param length How far it goes, in the same unit.
 * @param sizeOf The size of a row by its index from 0; 0 for a hidden one.
 * @param count How many rows there are to look at; what begins below them belongs to the last.
 */
export function coveredIndex(start: number, length: number, sizeOf: (index: number) => number, count: number): number {
  const end = start + length;
  let edge = 0;
  let first: { readonly index: number; readonly covered: number } | null = null;
  for (let index = 0; index < count; index++) {
    const size = sizeOf(index);
    const next = edge + size;
    if (size > 0 && start < next) {
      const covered = Math.min(end, next) - Math.max(start, edge);
      if (covered >= size / 2) return index;
      if (first !== null) return covered > first.covered ? index : first.index;
      if (end <= next) return index;
      first = { index, covered };
    }
    edge = next;
  }
  return first?.index ?? Math.max(0, count - 1);
}
