import { readGrams } from "../../src/sheet/readGrams";

describe("readGrams", () => {
  it("reads a bare number in the unit given, and text with a unit as it says", () => {
    expect(readGrams(10, "limit", 1000)).toEqual({ ok: true, value: 10_000 });
    expect(readGrams("10", "limit", 28.349523125)).toEqual({ ok: true, value: 283.49523125 });
    expect(readGrams("22 lb", "limit", 1000)).toEqual({ ok: true, value: 9979.03214 });
  });

  it("is null for blank, and hands on what cannot be read", () => {
    expect(readGrams("", "limit", 1000)).toEqual({ ok: true, value: null });
    expect(readGrams(-1, "limit", 1000)).toMatchObject({ problem: { facts: { argument: "limit", given: "-1" } } });
  });
});
