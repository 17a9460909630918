/** All things by rank, the least first, the lowest number where tied, but each only after those that come before it. */
export function orderByRank(before: readonly (readonly number[])[], rankOf: readonly number[]): number[] {
  const open = rankOf.map((_, thing) => thing).sort((a, b) => rankOf[a]! - rankOf[b]! || a - b);
  const isPlaced = new Uint8Array(rankOf.length);
  const order: number[] = [];
  while (open.length > 0) {
    const next = open.findIndex((thing) => before[thing]!.every((other) => isPlaced[other] === 1));
    const thing = open.splice(next, 1)[0]!;
    isPlaced[thing] = 1;
    order.push(thing);
  }
  return order;
}
