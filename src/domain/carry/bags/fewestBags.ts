import type { Bag, BagLoad } from "./bagLoad";
import { firstFitBags } from "./firstFitBags";
import { leastBags } from "./leastBags";
import { repackedBags } from "./repackedBags";
import { searchedBags } from "./searchedBags";
import type { Steps } from "./steps";

/** Things packed into bags. */
export interface FewestBags {
  /** The bag of each thing, in the order of the things; bags are numbered from 1 as they first appear. */
  readonly bagOf: readonly number[];
  readonly bagCount: number;
  /** No packing has fewer bags than this. Equal to bagCount where the packing is proved best. */
  readonly leastBags: number;
}

/** About a tenth of a second of one core, for what cannot be proved; most loads take far less. */
const SEARCH_STEPS = 6_000_000;

/**
 * Things of whole-number weights into as few bags of a capacity as were found; no weight is above the capacity.
 *
 * First by first fit, and where the bound says that fewer might do, by searching, repacking and searching again, within a fixed
 * number of steps.
 */
export function fewestBags(weights: readonly number[], capacity: number): FewestBags {
  const load = loadOf(weights, capacity);
  let bags = firstFitBags(load);
  let least = leastBags(load.capacity, load.weights, load.counts);
  let stepsLeft = SEARCH_STEPS;
  const within = <T>(share: number, work: (steps: Steps) => T): T => {
    const steps = { left: Math.min(share * SEARCH_STEPS, stepsLeft) };
    stepsLeft -= steps.left;
    const found = work(steps);
    stepsLeft += Math.max(0, steps.left);
    return found;
  };

  for (let bagCount = least; bagCount < bags.length && stepsLeft > 0; bagCount++) {
    let found = within(0.05, (steps) => searchedBags(load, bagCount, steps));
    if (found === "unknown") {
      bags = within(0.5, (steps) => repackedBags(load, bags, bagCount, steps));
      if (bags.length > bagCount) found = within(0.5, (steps) => searchedBags(load, bagCount, steps));
    }
    if (found === "none" && least === bagCount) least++;
    if (typeof found === "object") bags = found;
  }
  return { bagOf: bagOfEach(weights, bags), bagCount: bags.length, leastBags: least };
}

/** Weights are divided by what they have in common, so that a capacity between two sums is no room to waste. */
function loadOf(weights: readonly number[], capacity: number): BagLoad {
  const unit = weights.reduce(commonDivisor, 0) || 1;
  const countOf = new Map<number, number>();
  for (const weight of weights) countOf.set(weight, (countOf.get(weight) ?? 0) + 1);
  const distinct = [...countOf.keys()].sort((one, other) => other - one);
  return {
    capacity: Math.floor(capacity / unit),
    weights: distinct.map((weight) => weight / unit),
    counts: distinct.map((weight) => countOf.get(weight)!),
  };
}

function commonDivisor(one: number, other: number): number {
  return other === 0 ? one : commonDivisor(other, one % other);
}

/** The bag of each thing, as numbered by first appearance; things of one weight take the bags that hold it in turn. */
function bagOfEach(weights: readonly number[], bags: readonly Bag[]): number[] {
  const distinct = [...new Set(weights)].sort((one, other) => other - one);
  const bagsOf = new Map<number, number[]>(distinct.map((weight) => [weight, []]));
  for (const [index, bag] of bags.entries()) for (const place of bag) bagsOf.get(distinct[place]!)!.push(index);
  for (const list of bagsOf.values()) list.reverse();
  const numbers = new Map<number, number>();
  return weights.map((weight) => {
    const index = bagsOf.get(weight)!.pop()!;
    if (!numbers.has(index)) numbers.set(index, numbers.size + 1);
    return numbers.get(index)!;
  });
}
