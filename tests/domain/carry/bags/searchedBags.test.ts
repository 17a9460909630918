import fc from "fast-check";
import { searchedBags } from "../../../../src/domain/carry/bags/searchedBags";
import { fewestByTrying } from "./fewestByTrying";
import { loadOf } from "./loadOf";

const CAPACITY = 60;
const things = fc.array(fc.integer({ min: 1, max: CAPACITY }), { minLength: 1, maxLength: 9 });

describe("searchedBags", () => {
  it("finds a packing of so many bags exactly when there is one", () => {
    fc.assert(
      fc.property(things, fc.integer({ min: 1, max: 9 }), (weights, bagCount) => {
        const load = loadOf(weights, CAPACITY);
        const found = searchedBags(load, bagCount, { left: 1e6 });
        if (fewestByTrying(weights, CAPACITY) > bagCount) return expect(found).toBe("none");
        expect(typeof found).toBe("object");
        const bags = found as readonly (readonly number[])[];
        const packed = bags.flatMap((bag) => bag.map((place) => load.weights[place]!));
        expect(packed.sort((a, b) => a - b)).toEqual([...weights].sort((a, b) => a - b));
        for (const bag of bags)
          expect(bag.reduce((sum, place) => sum + load.weights[place]!, 0)).toBeLessThanOrEqual(CAPACITY);
      }),
      { numRuns: 400 },
    );
  });

  it("does not say that there is none when its steps run out", () => {
    const load = loadOf([31, 29, 27, 22, 19, 18, 16, 14, 13, 11, 9, 7, 5, 4, 3, 2], CAPACITY);
    for (let left = 0; left < 3000; left += 7) {
      const found = searchedBags(load, 4, { left });
      expect(found).not.toBe("none");
    }
    expect(typeof searchedBags(load, 4, { left: 1e7 })).toBe("object");
  });
});
