import type { Bag, BagLoad } from "./bagLoad";

/** Each thing, the heaviest first, into the first bag that has room: quick, and often a bag or two more than needed. */
export function firstFitBags({ capacity, weights, counts }: BagLoad): Bag[] {
  const bags: number[][] = [];
  const room: number[] = [];
  for (let place = 0; place < weights.length; place++) {
    let bag = 0;
    for (let packed = 0; packed < counts[place]!; packed++) {
      while (bag < bags.length && room[bag]! < weights[place]!) bag++;
      if (bag === bags.length) {
        bags.push([]);
        room.push(capacity);
      }
      bags[bag]!.push(place);
      room[bag]! -= weights[place]!;
    }
  }
  return bags;
}
