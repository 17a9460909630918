import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import weights from "../../shared/garment-weights.json";
import type { GarmentKind } from "../../src/domain/carry/garmentKind";
import { typicalGrams } from "../../src/domain/carry/typicalGrams";
import published from "./garmentWeights.json";

const GRAMS_PER_OUNCE = 28.349523125;
const listed = Object.entries(weights.sourceOf) as [GarmentKind, [keyof typeof weights.sources, string]][];
const publishedKg = published.kg as Readonly<Record<string, number>>;

describe("typical weights against the published table (Ecobalyse, default product mass)", () => {
  it.each(listed.filter(([, [source]]) => source === "ecobalyse"))("%s weighs as published", (kind, [, row]) => {
    expect(typicalGrams(kind)! / 1000).toBeCloseTo(publishedKg[row]!, 9);
  });

  it("has a suit in the middle of the ranges a web page of low authority gives, to 10 g", () => {
    const { "men's suit": mens, "women's suit": womens } = published.web.oz as unknown as Record<
      string,
      [number, number]
    >;
    const middleOunces = (mens![0] + mens![1] + womens![0] + womens![1]) / 4;
    expect(Math.round((middleOunces * GRAMS_PER_OUNCE) / 10) * 10).toBe(typicalGrams("suit"));
  });

  it("has a source for each figure and a figure for each source", () => {
    expect(Object.keys(weights.sourceOf)).toEqual(Object.keys(weights.grams));
  });

  it("marks every other figure as from memory, with no source", () => {
    const others = listed.filter(([kind, [source]]) => source !== "ecobalyse" && kind !== "suit");
    expect(new Set(others.map(([, [source]]) => source))).toEqual(new Set(["memory"]));
    expect(weights.sources.memory).toContain("no source");
  });

  const reference = resolve(__dirname, "../../../shared/reference/garment_weights.json");
  (existsSync(reference) ? it : it.skip)(
    "restates the reference folder's figures (skipped where that folder is absent)",
    () => {
      const given = JSON.parse(readFileSync(reference, "utf8")) as {
        ecobalyse: { kg: unknown };
        web_ranges_low_authority: { oz: unknown };
      };
      expect(published.kg).toEqual(given.ecobalyse.kg);
      expect(published.web.oz).toEqual(given.web_ranges_low_authority.oz);
    },
  );
});
