import type { Bag, BagLoad } from "./bagLoad";
import { bagFillings } from "./bagFillings";
import { leastBags } from "./leastBags";
import type { Steps } from "./steps";

/**
 * A packing into at most so many bags, found by going through all that could be one; "none" where there surely is none,
 * "unknown" where the steps ran out first.
 *
 * Bag by bag: each is begun with the heaviest thing left and filled in every way worth trying, the fullest first, as long as the room
 * wasted so far and the bound of what is left allow. Bin completion after Korf (AAAI 2002; from memory).
 */
export function searchedBags(load: BagLoad, bagCount: number, steps: Steps): Bag[] | "none" | "unknown" {
  const { capacity, weights } = load;
  const counts = [...load.counts];
  const bags: Bag[] = [];
  const total = weights.reduce((sum, weight, place) => sum + weight * counts[place]!, 0);
  let isCut = false;

  const packRest = (roomToWaste: number, from: number): boolean => {
    let heaviest = from;
    while (heaviest < counts.length && counts[heaviest] === 0) heaviest++;
    if (heaviest === counts.length) return true;
    steps.left -= counts.length;
    if (steps.left <= 0 || bags.length + leastBags(capacity, weights, counts) > bagCount) return false;
    const { fillings, isAll } = bagFillings(load, counts, heaviest, roomToWaste, steps);
    isCut ||= !isAll;
    for (const { bag, room } of fillings) {
      for (const place of bag) counts[place]!--;
      bags.push(bag);
      if (packRest(roomToWaste - room, heaviest)) return true;
      bags.pop();
      for (const place of bag) counts[place]!++;
      if (steps.left <= 0) break;
    }
    return false;
  };

  if (packRest(bagCount * capacity - total, 0)) return bags;
  return isCut || steps.left <= 0 ? "unknown" : "none";
}
