import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import type { Lift } from "../../src/domain/carry/lifting/lift";
import { liftIndex } from "../../src/domain/carry/lifting/liftIndex";
import { liftLimit } from "../../src/domain/carry/lifting/liftLimit";
import manual from "./lifting.json";

// The manual's tables and worked examples; where each stands is said in lifting.json.

type Unit = Lift["unit"];
type Row = readonly [value: number, multiplier: number];

/** The lift for which every multiplier is 1, so that one change shows one multiplier. */
const EASIEST: Readonly<Record<Unit, Lift>> = {
  kg: { unit: "kg", horizontal: 25, vertical: 75, travel: 25, angle: 0, liftsPerMinute: 0.2, hours: 1, grip: "good" },
  lb: { unit: "lb", horizontal: 10, vertical: 30, travel: 10, angle: 0, liftsPerMinute: 0.2, hours: 1, grip: "good" },
};

function multiplier(unit: Unit, change: Partial<Lift>): number {
  return liftLimit({ ...EASIEST[unit], ...change }) / liftLimit(EASIEST[unit]);
}

/** Half up, as the manual rounds; what stands between two by a rounding error of the machine counts as the half. */
function toPlaces(value: number, places: number): number {
  return Math.round(value * 10 ** places + 1e-9) / 10 ** places;
}

const printedOtherwise = manual.printedOtherwise as unknown as readonly (readonly [string, number, number, number])[];

describe("the load constants", () => {
  it("are 23 kg and 51 lb for the easiest lift", () => {
    expect(liftLimit(EASIEST.kg)).toBe(23);
    expect(liftLimit(EASIEST.lb)).toBe(51);
  });
});

describe.each([
  ["reachCm", "kg", "horizontal"],
  ["reachIn", "lb", "horizontal"],
  ["heightCm", "kg", "vertical"],
  ["heightIn", "lb", "vertical"],
  ["travelCm", "kg", "travel"],
  ["travelIn", "lb", "travel"],
  ["angleDegrees", "kg", "angle"],
  ["angleDegrees", "lb", "angle"],
] as const)("table %s in %s", (table, unit, measure) => {
  it.each(manual[table] as unknown as readonly Row[])("at %s gives %s", (value, printed) => {
    const exception = printedOtherwise.find(([name, at]) => name === table && at === value);
    const byFormula = toPlaces(multiplier(unit, { [measure]: value }), 2);
    if (exception === undefined) expect(byFormula).toBe(printed);
    // Three rows are printed one hundredth above what the printed formula gives.
    else expect([byFormula, printed]).toEqual([exception[3], exception[2]]);
  });

  it("counts less than the first row as the first, and gives 0 beyond the last", () => {
    const rows = manual[table] as unknown as readonly Row[];
    const last = rows.at(-1)![0];
    expect(multiplier(unit, { [measure]: last + 0.01 })).toBe(0);
    if (measure === "horizontal" || measure === "travel")
      expect(multiplier(unit, { [measure]: rows[0]![0] / 2 })).toBe(1);
  });
});

test("exactly three printed rows differ from the formula", () => expect(printedOtherwise.length).toBe(3));

describe("the frequency table", () => {
  const rows = manual.frequency;
  const columns: readonly (readonly [hours: number, isHigh: boolean])[] = [1, 2, 8].flatMap((hours) => [
    [hours, false] as const,
    [hours, true] as const,
  ]);
  describe.each(["kg", "lb"] as const)("in %s", (unit) => {
    it.each(rows)("at %s lifts a minute gives %s to %s, %s to %s, %s to %s", (liftsPerMinute, ...printed) => {
      columns.forEach(([hours, isHigh], place) => {
        const vertical = EASIEST[unit].vertical - (isHigh ? 0 : 1e-9);
        expect(multiplier(unit, { liftsPerMinute, hours, vertical })).toBeCloseTo(printed[place]!, 8);
      });
    });

    it("is interpolated straight between its rows", () => {
      for (let row = 1; row < rows.length - 1; row++) {
        const [from, to] = [rows[row - 1]!, rows[row]!];
        for (const share of [0.25, 0.5, 0.9]) {
          const liftsPerMinute = from[0]! + share * (to[0]! - from[0]!);
          columns.forEach(([hours, isHigh], place) => {
            const given = multiplier(unit, {
              liftsPerMinute,
              hours,
              vertical: EASIEST[unit].vertical - (isHigh ? 0 : 1e-9),
            });
            const [low, high] = [from[place + 1]!, to[place + 1]!];
            // At the first row without a load the method ends; up to there the multiplier falls to it.
            expect(given).toBeCloseTo(low + share * (high - low), 8);
          });
        }
      }
    });

    it("counts fewer than 0.2 lifts a minute as 0.2, up to 1, 2 and 8 hours alike", () => {
      for (const [hours, expected] of [
        [0.1, 1],
        [1, 1],
        [1.01, 0.95],
        [2, 0.95],
        [2.01, 0.85],
        [8, 0.85],
        [8.01, 0],
      ] as const)
        for (const liftsPerMinute of [0, 0.05, 0.2])
          expect(multiplier(unit, { hours, liftsPerMinute })).toBeCloseTo(expected, 12);
    });
  });
});

describe("the grips", () => {
  it.each(Object.entries(manual.grip))("%s is as printed, low and high", (grip, [low, high]) => {
    for (const unit of ["kg", "lb"] as const) {
      const below = EASIEST[unit].vertical - 1e-9;
      expect(multiplier(unit, { grip: grip as Lift["grip"], vertical: below })).toBeCloseTo(low!, 8);
      expect(multiplier(unit, { grip: grip as Lift["grip"] })).toBeCloseTo(high!, 12);
    }
  });
});

describe("the worked examples, in pounds and inches", () => {
  it.each(manual.examples.map((example) => [example.title, example] as const))("%s", (_title, example) => {
    const { load, limit, index, limitInFull, indexInFull, multipliers } = example;
    const lift: Lift = {
      unit: "lb",
      horizontal: example.horizontal,
      vertical: example.vertical,
      travel: example.travel,
      angle: example.angle,
      liftsPerMinute: example.liftsPerMinute,
      hours: example.hours,
      grip: example.grip as Lift["grip"],
    };
    // As printed: rounded multipliers, multiplied and rounded again.
    const fromPrinted = 51 * multipliers.reduce((product, each) => product * each, 1);
    expect(toPlaces(fromPrinted, 1)).toBe(limit);
    expect(toPlaces(load / limit, 1)).toBe(index);
    // The same lift in full precision.
    expect(liftLimit(lift)).toBeCloseTo(limitInFull, 3);
    const inFull = liftIndex(load, lift);
    expect(inFull.ok && inFull.value).toBeCloseTo(indexInFull, 3);
    // Six multipliers, each rounded by up to half a hundredth, and the three rows printed otherwise by one.
    expect(Math.abs(liftLimit(lift) - limit) / limit).toBeLessThan(0.03);
  });
});

const reference = resolve(__dirname, "../../../shared/reference/niosh_rnle.json");
(existsSync(reference) ? test : test.skip)(
  "these tables are those of the reference folder (skipped where that folder is absent)",
  () => {
    const { tables } = JSON.parse(readFileSync(reference, "utf8")) as {
      tables: Readonly<Record<string, readonly { x: number; m: number }[]>>;
    };
    const given = (name: string): unknown => tables[name]!.map(({ x, m }) => [x, m]);
    expect(manual.reachCm).toEqual(given("T1_HM_cm"));
    expect(manual.reachIn).toEqual(given("T1_HM_in"));
    expect(manual.heightCm).toEqual(given("T2_VM_cm"));
    expect(manual.heightIn).toEqual(given("T2_VM_in"));
    expect(manual.travelCm).toEqual(given("T3_DM_cm"));
    expect(manual.travelIn).toEqual(given("T3_DM_in"));
    expect(manual.angleDegrees).toEqual(given("T4_AM_deg"));
  },
);
