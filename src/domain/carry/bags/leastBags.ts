/**
 * A number of bags that no packing can go below.
 *
 * The bound L2 of Martello and Toth (Knapsack Problems, 1990, section 8.3.2; from memory): for each weight at most half a
 * bag, the things above half need a bag each, and what the lighter ones overflow the room beside them needs more. Weights
 * come with the heaviest first; a count of 0 stands for none.
 */
export function leastBags(capacity: number, weights: readonly number[], counts: readonly number[]): number {
  let aboveHalf = 0;
  let total = 0;
  let firstHalf = 0;
  for (let place = 0; place < weights.length; place++) {
    total += weights[place]! * counts[place]!;
    if (weights[place]! * 2 <= capacity) continue;
    aboveHalf += counts[place]!;
    firstHalf = place + 1;
  }
  let least = Math.max(aboveHalf, Math.ceil(total / capacity));
  let lighter = 0;
  let roomBeside = 0;
  let heavy = firstHalf;
  for (let place = firstHalf; place < weights.length; place++) {
    lighter += weights[place]! * counts[place]!;
    for (; heavy > 0 && weights[heavy - 1]! + weights[place]! <= capacity; heavy--) {
      roomBeside += counts[heavy - 1]! * (capacity - weights[heavy - 1]!);
    }
    if (lighter > roomBeside) least = Math.max(least, aboveHalf + Math.ceil((lighter - roomBeside) / capacity));
  }
  return least;
}
