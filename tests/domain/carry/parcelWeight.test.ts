import fc from "fast-check";
import { parcelWeight } from "../../../src/domain/carry/parcelWeight";

const parcel = { length: 62, width: 49, height: 39, weight: 10, divisor: 6000, roundUp: null };

describe("parcelWeight", () => {
  // A published example's parcel (parcelboy.com/valumetric: 62 x 49 x 39 cm, 10 kg, divisor 6000); the result, 19.75, is worked out.
  it("is the volume over the divisor where that is more than the weight", () => {
    expect(parcelWeight(parcel)).toBeCloseTo(19.747, 12);
    expect(parcelWeight({ ...parcel, weight: 20 })).toBe(20);
  });

  // UPS: 5000 cubic centimetres to the kilogram and up to the next whole kilogram; DHL Parcel Poland: 4000.
  it("is rounded up to the carrier's step", () => {
    expect(parcelWeight({ ...parcel, divisor: 5000, roundUp: 1 })).toBe(24);
    expect(parcelWeight({ ...parcel, divisor: 4000, roundUp: 0.5 })).toBe(30);
    expect(parcelWeight({ ...parcel, weight: 24, divisor: 5000, roundUp: 1 })).toBe(24);
  });

  it("works in inches and pounds with a divisor of cubic inches to the pound (UPS and DHL Express: 139)", () => {
    expect(parcelWeight({ length: 24, width: 18, height: 12, weight: 20, divisor: 139, roundUp: 1 })).toBe(38);
  });

  it("leaves what is a whole number of steps already, whatever the step", () => {
    const steps = fc.tuple(fc.integer({ min: 1, max: 2000 }), fc.constantFrom(0.05, 0.1, 0.25, 0.3, 0.5, 1, 2));
    fc.assert(
      fc.property(steps, ([count, roundUp]) => {
        const weight = Number((count * roundUp).toFixed(2));
        expect(parcelWeight({ ...parcel, length: 0.001, weight, roundUp })).toBe(weight);
      }),
    );
  });

  it("agrees with whole grams, rounded up by division with remainder", () => {
    const grams = fc.integer({ min: 1, max: 40_000 });
    fc.assert(
      fc.property(grams, fc.constantFrom(50, 100, 500, 1000), (weightGrams, stepGrams) => {
        const remainder = weightGrams % stepGrams;
        const rounded = remainder === 0 ? weightGrams : weightGrams + stepGrams - remainder;
        expect(parcelWeight({ ...parcel, length: 0.001, weight: weightGrams / 1000, roundUp: stepGrams / 1000 })).toBe(
          rounded / 1000,
        );
      }),
    );
  });
});
