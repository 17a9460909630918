import fc from "fast-check";
import { firstFitBags } from "../../../../src/domain/carry/bags/firstFitBags";
import { repackedBags } from "../../../../src/domain/carry/bags/repackedBags";
import { loadOf } from "./loadOf";

const things = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 4, maxLength: 60 });

describe("repackedBags", () => {
  it("keeps every thing, no bag above the capacity, and never more bags than it began with", () => {
    fc.assert(
      fc.property(things, (weights) => {
        const load = loadOf(weights, 100);
        const start = firstFitBags(load);
        const bags = repackedBags(load, start, 1, { left: 5000 });
        expect(bags.length).toBeLessThanOrEqual(start.length);
        expect(bags.flat().sort((a, b) => a - b)).toEqual(start.flat().sort((a, b) => a - b));
        for (const bag of bags)
          expect(bag.reduce((sum, place) => sum + load.weights[place]!, 0)).toBeLessThanOrEqual(100);
      }),
    );
  });

  it("gathers the room of bags packed badly until one is empty", () => {
    const load = loadOf([50, 50, 50, 50, 30, 30, 30, 10, 10, 10, 40, 40], 100);
    const eachAlone = load.counts.flatMap((count, place) => Array.from({ length: count }, () => [place]));
    expect(repackedBags(load, eachAlone, 4, { left: 1e6 }).length).toBe(4);
  });
});
