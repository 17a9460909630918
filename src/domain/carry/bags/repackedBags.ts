import { seededRandom } from "../../seededRandom";
import type { Bag, BagLoad } from "./bagLoad";
import type { Steps } from "./steps";

/** Few enough that a few bags are packed again in a moment, enough that a full one is mostly found. */
const MOST_TRIES = 300;

/**
 * A packing into fewer bags, sought by unpacking a few bags at a time and packing them again, each as full as can be; ends at
 * `bagCount` bags or when the steps run out, with the fewest found.
 *
 * What is packed again is kept when it takes no more bags and the room is gathered in fewer of them (the sum of the squares of
 * what the bags hold does not fall), so that in the end one is empty. Filling after Gupta and Ho's minimum bin slack (1999; from
 * memory). Chance is a fixed sequence: the same load has the same packing on every machine.
 */
export function repackedBags(
  { capacity, weights }: BagLoad,
  start: readonly Bag[],
  bagCount: number,
  steps: Steps,
): Bag[] {
  let bags = [...start];
  const random = seededRandom(1);
  const below = (end: number): number => Math.floor(random() * end);
  const held = (bag: Bag): number => bag.reduce((sum, place) => sum + weights[place]!, 0);

  const emptiest = (): number => {
    steps.left -= bags.length * 4;
    const loads = bags.map(held);
    return loads.indexOf(Math.min(...loads));
  };

  /** The bag begun with one of some things that leaves the least room, taken out of them. */
  const takeFullest = (things: number[]): { bag: Bag; room: number } => {
    const [first] = things.splice(below(3) === 0 ? below(things.length) : 0, 1);
    let tries = 0;
    let leastRoom = Infinity;
    let best: number[] = [];
    const taken: number[] = [];
    const take = (from: number, room: number): void => {
      tries++;
      if (room < leastRoom || (room === leastRoom && below(2) === 0)) {
        leastRoom = room;
        best = [...taken];
      }
      for (let index = from; index < things.length && tries < MOST_TRIES; index++) {
        steps.left--;
        const isSameAgain = index > from && things[index] === things[index - 1];
        if (isSameAgain || weights[things[index]!]! > room) continue;
        taken.push(index);
        take(index + 1, room - weights[things[index]!]!);
        taken.pop();
      }
    };
    take(0, capacity - weights[first!]!);
    const bag = [first!, ...best.map((index) => things[index]!)];
    for (const index of best.reverse()) things.splice(index, 1);
    return { bag, room: leastRoom };
  };

  while (steps.left > 0 && bags.length > bagCount) {
    const chosen = new Set<number>();
    const chosenCount = Math.min(2 + below(3), bags.length);
    if (below(2) === 0) chosen.add(emptiest());
    while (chosen.size < chosenCount) chosen.add(below(bags.length));
    const unpacked = [...chosen].map((index) => bags[index]!);
    const things = unpacked.flat().sort((one, other) => one - other);
    let squares = unpacked.reduce((sum, bag) => sum - held(bag) * held(bag), 0);
    const packed: Bag[] = [];
    while (things.length > 0) {
      const { bag, room } = takeFullest(things);
      packed.push(bag);
      squares += (capacity - room) * (capacity - room);
    }
    steps.left -= bags.length;
    if (packed.length < chosenCount || (packed.length === chosenCount && squares >= 0))
      bags = [...bags.filter((_, index) => !chosen.has(index)), ...packed];
  }
  return bags;
}
