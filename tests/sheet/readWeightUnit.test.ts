import { readWeightUnit } from "../../src/sheet/readWeightUnit";

describe("readWeightUnit", () => {
  it("gives the grams in a kilogram, gram, pound and ounce", () => {
    // International yard and pound agreement of 1959: a pound is 453.59237 g, an ounce a sixteenth of it.
    for (const [unit, grams] of [
      ["kg", 1000],
      ["g", 1],
      ["lb", 453.59237],
      ["LBS", 453.59237],
      ["oz", 453.59237 / 16],
    ] as const)
      expect(readWeightUnit(unit, "unit")).toEqual({ ok: true, value: grams });
  });

  it("is null for blank, however hosts send it", () => {
    for (const blank of [null, undefined, "", 0, [[null]]])
      expect(readWeightUnit(blank, "unit")).toEqual({ ok: true, value: null });
  });

  it("refuses anything else, naming the units there are", () => {
    for (const raw of ["stone", 5, true]) {
      const unit = readWeightUnit(raw, "unit");
      expect(unit.ok ? null : unit.problem.facts).toMatchObject({
        argument: "unit",
        expected: '"kg", "g", "lb" or "oz"',
      });
    }
  });
});
