import fc from "fast-check";
import type { Lift } from "../../../../src/domain/carry/lifting/lift";
import { liftLimit } from "../../../../src/domain/carry/lifting/liftLimit";
import { liftOutside } from "../../../../src/domain/carry/lifting/liftOutside";

// The manual's tables and examples are in tests/outside/lifting.test.ts.

const lifts: fc.Arbitrary<Lift> = fc.record({
  unit: fc.constant("kg" as const),
  horizontal: fc.double({ min: 1, max: 70, noNaN: true }),
  vertical: fc.double({ min: 0, max: 190, noNaN: true }),
  travel: fc.double({ min: 0, max: 190, noNaN: true }),
  angle: fc.double({ min: 0, max: 150, noNaN: true }),
  liftsPerMinute: fc.double({ min: 0, max: 17, noNaN: true }),
  hours: fc.double({ min: 0.1, max: 9, noNaN: true }),
  grip: fc.constantFrom("good", "fair", "poor"),
});

const CM_PER_INCH = 2.54;
const KG_PER_POUND = 0.45359237;

describe("liftLimit", () => {
  it("is never above the load constant, and 0 exactly where the lift is outside the method", () => {
    fc.assert(
      fc.property(lifts, (lift) => {
        const limit = liftLimit(lift);
        expect(limit).toBeLessThanOrEqual(23);
        expect(limit > 0).toBe(liftOutside(lift) === null);
      }),
    );
  });

  it("never grows when a lift is made further, longer, more turned, more frequent or worse to hold", () => {
    const harder: readonly (keyof Lift)[] = ["horizontal", "travel", "angle", "liftsPerMinute", "hours"];
    fc.assert(
      fc.property(
        lifts,
        fc.constantFrom(...harder),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (lift, measure, by) => {
          const harderLift = { ...lift, [measure]: (lift[measure] as number) + by };
          expect(liftLimit(harderLift)).toBeLessThanOrEqual(liftLimit(lift) + 1e-12);
          expect(liftLimit({ ...lift, grip: "poor" })).toBeLessThanOrEqual(liftLimit(lift) + 1e-12);
        },
      ),
    );
  });

  it("allows in pounds and inches up to 4 % more than in kilograms and centimetres, never less, as its constants are rounded", () => {
    fc.assert(
      fc.property(lifts, (lift) => {
        // Between 75 cm and 30 in the two systems use different rows of the tables.
        fc.pre(lift.vertical < 75 || lift.vertical > 76.2);
        const inInches = (value: number): number => value / CM_PER_INCH;
        const pounds = liftLimit({
          ...lift,
          unit: "lb",
          horizontal: inInches(lift.horizontal),
          vertical: inInches(lift.vertical),
          travel: inInches(lift.travel),
        });
        const kg = liftLimit(lift);
        fc.pre(kg > 0);
        expect((pounds * KG_PER_POUND) / kg).toBeGreaterThan(1);
        expect((pounds * KG_PER_POUND) / kg).toBeLessThan(1.04);
      }),
    );
  });
});
