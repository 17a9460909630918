import fc from "fast-check";
import { fewestBags } from "../../../../src/domain/carry/bags/fewestBags";
import { firstFitBags } from "../../../../src/domain/carry/bags/firstFitBags";
import { fewestByTrying } from "./fewestByTrying";
import { loadOf } from "./loadOf";

const CAPACITY = 100;
const few = fc.array(fc.integer({ min: 1, max: CAPACITY }), { maxLength: 9 });
const light = fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 9 });
const many = fc.array(fc.integer({ min: 1, max: CAPACITY }), { maxLength: 120 });

/** What each bag holds, in the order of their numbers. */
function loadsOf(weights: readonly number[], bagOf: readonly number[]): number[] {
  const loads: number[] = [];
  weights.forEach((weight, index) => (loads[bagOf[index]! - 1] = (loads[bagOf[index]! - 1] ?? 0) + weight));
  return loads;
}

describe("fewestBags", () => {
  it("finds and proves what trying everything finds", () => {
    fc.assert(
      fc.property(fc.oneof(few, light), (weights) => {
        const fewest = fewestByTrying(weights, CAPACITY);
        expect(fewestBags(weights, CAPACITY)).toMatchObject({ bagCount: fewest, leastBags: fewest });
      }),
      { numRuns: 300 },
    );
  });

  it("puts each thing into one bag, none above the capacity, numbered from 1 by first appearance", () => {
    fc.assert(
      fc.property(many, (weights) => {
        const { bagOf, bagCount, leastBags } = fewestBags(weights, CAPACITY);
        expect(bagOf.length).toBe(weights.length);
        const loads = loadsOf(weights, bagOf);
        expect(loads.length).toBe(bagCount);
        for (const load of loads) expect(load).toBeLessThanOrEqual(CAPACITY);
        expect([...new Set(bagOf)]).toEqual(loads.map((_, index) => index + 1));
        expect(leastBags).toBeLessThanOrEqual(bagCount);
        expect(bagCount).toBeLessThanOrEqual(firstFitBags(loadOf(weights, CAPACITY)).length);
      }),
      { numRuns: 50 },
    );
  });

  it("comes to the same answer again, and to as many bags in any order and unit", () => {
    fc.assert(
      fc.property(many, fc.constantFrom(3, 7, 1000), (weights, scale) => {
        const packed = fewestBags(weights, CAPACITY);
        expect(fewestBags(weights, CAPACITY)).toEqual(packed);
        const scaled = weights.map((weight) => weight * scale);
        expect(fewestBags(scaled, CAPACITY * scale + scale - 1)).toEqual(packed);
        expect(fewestBags([...weights].reverse(), CAPACITY).bagCount).toBe(packed.bagCount);
      }),
      { numRuns: 30 },
    );
  });

  it("needs no bag for nothing, and one for things that weigh nothing", () => {
    expect(fewestBags([], CAPACITY)).toEqual({ bagOf: [], bagCount: 0, leastBags: 0 });
    expect(fewestBags([0, 0], CAPACITY).bagOf).toEqual([1, 1]);
  });

  // D. S. Johnson's example (1973; from memory, and plain to see: 51 + 26 + 23 and 27 + 27 + 23 + 23 fill a bag).
  it("takes nine bags where putting the heaviest first into the first bag with room takes eleven", () => {
    const weights = [51, 27, 26, 23, 23].flatMap((weight) => Array.from({ length: 6 }, () => weight));
    expect(firstFitBags(loadOf(weights, 100)).length).toBe(11);
    expect(fewestBags(weights, 100)).toMatchObject({ bagCount: 9, leastBags: 9 });
  });
});
