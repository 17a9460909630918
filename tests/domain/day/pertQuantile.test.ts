import fc from "fast-check";
import type { ChangeRange } from "../../../src/domain/day/changeRange";
import { pertQuantile } from "../../../src/domain/day/pertQuantile";
import { betaBelow } from "./betaBelow";

const QUARTERS = [0, 1, 2, 3, 4] as const;

test.each(QUARTERS)(
  "with the peak at %d quarters it is the inverse of the beta distribution's closed form",
  (quarters) => {
    const minutesAt = pertQuantile({ low: 0, likely: quarters, high: 4 });
    for (let percent = 1; percent < 100; percent++) {
      const chance = percent / 100;
      expect(Math.abs(betaBelow(quarters, minutesAt(chance) / 4) - chance)).toBeLessThan(1e-4);
    }
  },
);

const range: fc.Arbitrary<ChangeRange> = fc
  .uniqueArray(fc.integer({ min: 0, max: 120 }), { minLength: 2, maxLength: 2 })
  .chain(([one, other]) => {
    const [low, high] = [Math.min(one!, other!), Math.max(one!, other!)];
    return fc.integer({ min: low, max: high }).map((likely) => ({ low, likely, high }));
  });

test("its mean is the published (low + 4 likely + high) / 6, and its variance that of the beta distribution with that mean", () => {
  fc.assert(
    fc.property(range, ({ low, likely, high }) => {
      const minutesAt = pertQuantile({ low, likely, high });
      const drawn = Array.from({ length: 20_000 }, (_, at) => minutesAt((at + 0.5) / 20_000));
      const mean = drawn.reduce((sum, each) => sum + each, 0) / drawn.length;
      const variance = drawn.reduce((sum, each) => sum + (each - mean) ** 2, 0) / drawn.length;
      const published = (low + 4 * likely + high) / 6;
      expect(Math.abs(mean - published)).toBeLessThan(1e-3 * (high - low));
      // A beta distribution whose shapes add up to 6 has the variance (mean - low)(high - mean) / 7.
      expect(Math.abs(variance - ((published - low) * (high - published)) / 7)).toBeLessThan(1e-3 * (high - low) ** 2);
    }),
    { numRuns: 60 },
  );
});

test("more chance never means fewer minutes, and all stay within the range", () => {
  fc.assert(
    fc.property(
      range,
      fc.double({ min: 0, max: 0.999999, noNaN: true }),
      fc.double({ min: 0, max: 0.999999, noNaN: true }),
      (of, one, other) => {
        const minutesAt = pertQuantile(of);
        const [less, more] = [Math.min(one, other), Math.max(one, other)].map(minutesAt) as [number, number];
        expect(less).toBeLessThanOrEqual(more);
        expect(less).toBeGreaterThanOrEqual(of.low);
        expect(more).toBeLessThanOrEqual(of.high);
      },
    ),
  );
});
