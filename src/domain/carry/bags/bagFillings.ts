import type { Bag, BagLoad } from "./bagLoad";
import type { Steps } from "./steps";

/** One way to fill a bag, and the room it leaves. */
interface Filling {
  readonly bag: Bag;
  readonly room: number;
}

/** Among very many small things no bag needs them all tried. */
const MOST_STEPS = 20_000;

/**
 * The ways worth trying to fill a bag that holds the thing at `heaviest`, wasting no more than `roomToWaste`, the fullest first.
 *
 * Not worth trying: where something more fits, where one thing could be exchanged for a heavier one, or two for one no lighter; for then
 * any packing with it can be made into one without it. `isAll` is false where the steps ran out.
 */
export function bagFillings(
  { capacity, weights }: BagLoad,
  counts: number[],
  heaviest: number,
  roomToWaste: number,
  steps: Steps,
): { fillings: Filling[]; isAll: boolean } {
  const fillings: Filling[] = [];
  const stopAt = Math.max(0, steps.left - MOST_STEPS);
  const bag = [heaviest];

  const fill = (from: number, room: number): void => {
    let isFull = true;
    for (let place = from; place < weights.length && steps.left > stopAt; place++) {
      steps.left--;
      if (counts[place] === 0 || weights[place]! > room) continue;
      isFull = false;
      counts[place]!--;
      bag.push(place);
      fill(place, room - weights[place]!);
      bag.pop();
      counts[place]!++;
    }
    if (isFull && room <= roomToWaste && !isBeaten(room)) fillings.push({ bag: [...bag], room });
  };

  /** Whether a thing that is left weighs at least so much and at most so much; looked for from a place towards the heavier ones. */
  const isLeft = (from: number, least: number, most: number): boolean => {
    for (let place = from; place >= 0 && weights[place]! <= most; place--) {
      steps.left--;
      if (counts[place]! > 0 && weights[place]! >= least) return true;
    }
    return false;
  };

  const isBeaten = (room: number): boolean => {
    if (isLeft(weights.length - 1, 0, room)) return true;
    for (let one = 1; one < bag.length; one++) {
      const place = bag[one]!;
      const weight = weights[place]!;
      if (isLeft(place - 1, weight, weight + room)) return true;
      for (let other = one + 1; other < bag.length; other++) {
        const both = weight + weights[bag[other]!]!;
        if (isLeft(place - 1, both, both + room)) return true;
      }
    }
    return false;
  };

  counts[heaviest]!--;
  fill(heaviest, capacity - weights[heaviest]!);
  counts[heaviest]!++;
  fillings.sort((one, other) => one.room - other.room);
  return { fillings, isAll: steps.left > stopAt };
}
