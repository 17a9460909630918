/**
 * What meeting each stop is worth, so that sums compare as wished: one of a lower rank outweighs all of higher ranks together,
 * and within a rank the number counts. Exact for 100 stops of ranks 0 to 19.
 */
export function stopWorths(ranks: readonly number[]): readonly number[] {
  const counts: number[] = [];
  for (const rank of ranks) counts[rank] = (counts[rank] ?? 0) + 1;
  const worthOf: number[] = [];
  let worth = 1;
  for (let rank = counts.length - 1; rank >= 0; rank--) {
    worthOf[rank] = worth;
    worth *= (counts[rank] ?? 0) + 1;
  }
  return ranks.map((rank) => worthOf[rank]!);
}
