import fc from "fast-check";
import { leastBags } from "../../../../src/domain/carry/bags/leastBags";
import { fewestByTrying } from "./fewestByTrying";
import { loadOf } from "./loadOf";

function least(things: readonly number[], capacity: number): number {
  const { weights, counts } = loadOf(things, capacity);
  return leastBags(capacity, weights, counts);
}

/** The bound as it is defined: for every threshold, without sums carried on. */
function leastByDefinition(things: readonly number[], capacity: number): number {
  const sum = (list: readonly number[]): number => list.reduce((total, weight) => total + weight, 0);
  const bounds = [0, ...things.filter((weight) => weight * 2 <= capacity)].map((threshold) => {
    const alone = things.filter((weight) => weight > capacity - threshold);
    const half = things.filter((weight) => weight <= capacity - threshold && weight * 2 > capacity);
    const light = things.filter((weight) => weight * 2 <= capacity && weight >= threshold);
    const over = sum(light) - (half.length * capacity - sum(half));
    return alone.length + half.length + Math.max(0, Math.ceil(over / capacity));
  });
  return Math.max(...bounds);
}

describe("leastBags", () => {
  it("is the sum over the capacity for light things, and one each for things above half", () => {
    expect(least([30, 30, 30, 30], 100)).toBe(2);
    expect(least([60, 60, 60], 100)).toBe(3);
    expect(least([], 100)).toBe(0);
  });

  it("sees that nothing goes beside the heavy ones", () => {
    expect(least([80, 80, 30, 30, 30, 30], 100)).toBe(4);
  });

  it("is never above the fewest bags, and is what its definition says", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 100 }), { maxLength: 8 }), (things) => {
        expect(least(things, 100)).toBe(leastByDefinition(things, 100));
        expect(least(things, 100)).toBeLessThanOrEqual(fewestByTrying(things, 100));
      }),
    );
  });
});
