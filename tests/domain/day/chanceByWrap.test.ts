import type { ChangeRange } from "../../../src/domain/day/changeRange";
import { chanceByWrap } from "../../../src/domain/day/chanceByWrap";
import { dayPlan } from "../../../src/domain/day/dayPlan";
import type { Look } from "../../../src/domain/day/look";
import { minutesSpareAtWrap } from "../../../src/domain/day/minutesSpareAtWrap";
import { smallestCrew } from "../../../src/domain/day/smallestCrew";
import { sayProblem } from "../../../src/domain/wording";
import { betaBelow } from "./betaBelow";
import { sampleDay, sampleLook } from "./sampleLook";

const RUNS = 6000;
const mina = { talents: ["Mina"] };

/** One talent, so that every change waits for the shot before it: the day is a single chain. */
function chain(ranges: readonly ChangeRange[], shootingMinutes = 10): Look[] {
  return ranges.map((changeRange, index) =>
    sampleLook(index + 1, { ...mina, shootingMinutes, changeMinutes: changeRange.likely, changeRange }),
  );
}

function chance(looks: readonly Look[], minutesFromCall: number, runs = RUNS, seed = 1): number {
  const found = chanceByWrap(sampleDay(looks), 9 / 24 + minutesFromCall / 1440, runs, seed);
  if (!found.ok) throw new Error(sayProblem(found.problem));
  return found.value;
}

/** The chance that independent changes together take at most so many minutes: their distributions folded exactly, in steps of a tenth of a minute. */
function foldedBelow(ranges: readonly ChangeRange[], minutes: number): number {
  const step = 0.1;
  let shares = [1];
  let least = 0;
  for (const { low, likely, high } of ranges) {
    const quarters = ((likely - low) / (high - low)) * 4;
    if (![0, 1, 2, 3, 4].includes(quarters)) throw new Error("no closed form");
    const cells = Math.round((high - low) / step);
    const below = (at: number): number => betaBelow(quarters as 0, at / cells);
    const next = new Array<number>(shares.length + cells).fill(0);
    for (let at = 0; at < cells; at++) {
      const share = below(at + 1) - below(at);
      // A cell stands for its middle: half its share at either end.
      shares.forEach((other, place) => {
        next[place + at]! += (other * share) / 2;
        next[place + at + 1]! += (other * share) / 2;
      });
    }
    shares = next;
    least += low;
  }
  return shares.reduce((sum, share, place) => (least + place * step <= minutes + 1e-9 ? sum + share : sum), 0);
}

const standardError = (exact: number, runs: number): number => Math.sqrt((exact * (1 - exact)) / runs);

describe("a single chain", () => {
  const ranges = [
    { low: 10, likely: 15, high: 30 },
    { low: 5, likely: 5, high: 25 },
    { low: 10, likely: 20, high: 30 },
    { low: 8, likely: 20, high: 24 },
    { low: 12, likely: 32, high: 32 },
  ];

  test.each([70, 80, 85, 90, 95, 100, 110])(
    "agrees with the exact folding of its changes when they may take %d minutes, within four standard errors",
    (minutes) => {
      const exact = foldedBelow(ranges, minutes);
      const found = chance(chain(ranges), minutes + 50);
      expect(Math.abs(found - exact)).toBeLessThanOrEqual(4 * standardError(exact, RUNS) + 0.002);
    },
  );

  test("and with the normal distribution of the same mean and variance, which the PERT method takes for many activities", () => {
    const many = Array.from({ length: 40 }, () => ({ low: 10, likely: 15, high: 30 }));
    const mean = 40 * (100 / 6);
    const deviation = Math.sqrt((40 * (100 / 6 - 10) * (30 - 100 / 6)) / 7);
    // Phi(1) = 0.8413 and Phi(-1) = 0.1587, from the tables of the normal distribution.
    expect(chance(chain(many), mean + deviation + 400, 1500)).toBeCloseTo(0.8413, 1);
    expect(chance(chain(many), mean - deviation + 400, 1500)).toBeCloseTo(0.1587, 1);
  });

  test("a seed errs as the help says: of 100 seeds about two thirds within one standard error, and hardly one beyond three", () => {
    const exact = foldedBelow(ranges, 88);
    const error = standardError(exact, 300);
    const off = Array.from(
      { length: 100 },
      (_, seed) => Math.abs(chance(chain(ranges), 138, 300, seed) - exact) / error,
    );
    expect(off.filter((each) => each > 3).length).toBeLessThanOrEqual(2);
    expect(off.filter((each) => each < 1).length).toBeGreaterThan(50);
    expect(off.filter((each) => each < 1).length).toBeLessThan(85);
  });
});

test("the documented example is the chance worked out by hand, within three standard errors", () => {
  // Look 1 is changed in c1 and shot for 30 minutes, look 2 changed meanwhile in c2 and shot for 25, look 3 changed
  // during that in at most 20 and shot for 30: the day takes c1 + max(30, c2) + 55 minutes, and 105 are there.
  const looks = [
    sampleLook(1, { ...mina, changeMinutes: 15, changeRange: { low: 10, likely: 15, high: 30 }, shootingMinutes: 30 }),
    sampleLook(2, {
      talents: ["Teo"],
      changeMinutes: 20,
      changeRange: { low: 10, likely: 20, high: 50 },
      shootingMinutes: 25,
    }),
    sampleLook(3, { ...mina, changeMinutes: 10, changeRange: { low: 5, likely: 10, high: 20 }, shootingMinutes: 30 }),
  ];
  const firstBelow = (minutes: number): number => betaBelow(1, Math.min(1, Math.max(0, (minutes - 10) / 20)));
  const secondBelow = (minutes: number): number => betaBelow(1, (minutes - 10) / 40);
  let exact = secondBelow(30) * firstBelow(20);
  for (let c2 = 30; c2 < 40; c2 += 0.01)
    exact += (secondBelow(c2 + 0.01) - secondBelow(c2)) * firstBelow(50 - c2 - 0.005);
  expect(Math.abs(chance(looks, 105, 2000) - exact)).toBeLessThan(3 * standardError(exact, 2000));
});

test("a day without a range is certain, one way or the other, and as DAYFIT says", () => {
  const looks = [sampleLook(1, { ...mina, changeMinutes: 15, shootingMinutes: 30 })];
  for (const minutes of [44, 45, 46]) {
    const plan = dayPlan(sampleDay(looks));
    const spare = plan.ok && minutesSpareAtWrap(plan.value, 9 / 24 + minutes / 1440);
    expect(chance(looks, minutes)).toBe(spare !== false && spare.ok && spare.value >= 0 ? 1 : 0);
  }
});

test("never before the quickest of all, always after the slowest, and later wraps never less", () => {
  const looks = chain([
    { low: 10, likely: 15, high: 30 },
    { low: 5, likely: 10, high: 20 },
  ]);
  const chances = Array.from({ length: 40 }, (_, at) => chance(looks, 33 + at, 300));
  expect(chances[0]).toBe(0);
  expect(chances.at(-1)).toBe(1);
  expect(chances).toEqual([...chances].sort((a, b) => a - b));
});

test("the same seed gives the same chance, another seed another", () => {
  const looks = chain([{ low: 10, likely: 15, high: 30 }]);
  expect(chance(looks, 27, 2000, 1)).toBe(chance(looks, 27, 2000, 1));
  expect(chance(looks, 27, 2000, 1)).not.toBe(chance(looks, 27, 2000, 2));
});

test("a slower High never makes the chance better, draw for draw", () => {
  const withHigh = (high: number): number =>
    chance(
      chain([
        { low: 10, likely: 15, high },
        { low: 5, likely: 10, high: 20 },
      ]),
      52,
      2000,
    );
  const chances = [20, 25, 30, 40, 60].map(withHigh);
  expect(chances).toEqual([...chances].sort((a, b) => b - a));
});

test("the change table's figures are fixed, and what was shot is past chance", () => {
  const changeRange = { low: 10, likely: 15, high: 30 };
  const looks = [
    sampleLook(1, { ...mina, changeMinutes: 15, changeRange, shootingMinutes: 10, shotAt: 9.25 / 24 }),
    sampleLook(2, { ...mina, changeMinutes: 15, changeRange, shootingMinutes: 10 }),
  ];
  const day = sampleDay(looks, { changes: new Map([["1", new Map([["2", 20]])]]) });
  // Shot from 09:15 to 09:25, changed in 20 minutes and shot until 09:55, whatever is drawn.
  expect(chanceByWrap(day, 9 / 24 + 54 / 1440, 200, 1)).toEqual({ ok: true, value: 0 });
  expect(chanceByWrap(day, 9 / 24 + 55 / 1440, 200, 1)).toEqual({ ok: true, value: 1 });
});

test("problems come back, those of a range too", () => {
  const bad = { reason: "argument-missing", facts: { argument: "Low of look 1", expected: "minutes" } } as const;
  expect(chanceByWrap(sampleDay([sampleLook(1, { changeRange: bad })]), 0.5, 10, 1)).toEqual({
    ok: false,
    problem: bad,
  });
  const said = (found: ReturnType<typeof chanceByWrap>): string => (found.ok ? "" : sayProblem(found.problem));
  expect(said(chanceByWrap(sampleDay([]), 0.5, 10, 1))).toBe(
    "There is nothing to compute the chance from; fill in the rows of looks.",
  );
  const crew = { ...smallestCrew, dressers: 0 };
  const late = [sampleLook(1, { changeRange: { low: 0, likely: 0, high: 20 } })];
  expect(said(chanceByWrap(sampleDay(late, { crew }), 0.5, 10, 1))).toMatch(/^people, dressers: "0"/);
  const huge = [sampleLook(1, { changeMinutes: 1, changeRange: { low: 0, likely: 1, high: 1e308 } })];
  expect(said(chanceByWrap(sampleDay(huge), 0.5, 10, 1))).toMatch(/^The day is too large/);
});
