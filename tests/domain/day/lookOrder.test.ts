import { dayPlan } from "../../../src/domain/day/dayPlan";
import { lookOrder } from "../../../src/domain/day/lookOrder";
import type { Look } from "../../../src/domain/day/look";
import type { OrderedDay } from "../../../src/domain/day/orderedDay";
import { smallestCrew } from "../../../src/domain/day/smallestCrew";
import { sayProblem } from "../../../src/domain/wording";
import { sampleDay, sampleLook } from "./sampleLook";

function ordered(looks: readonly Look[], said = {}): OrderedDay {
  const outcome = lookOrder(sampleDay(looks, said));
  if (!outcome.ok) throw new Error(sayProblem(outcome.problem));
  return outcome.value;
}
function problem(looks: readonly Look[], said = {}): string {
  const outcome = lookOrder(sampleDay(looks, said));
  return outcome.ok ? "" : sayProblem(outcome.problem);
}
const labels = ({ plan }: OrderedDay): unknown[] => plan.looks.map(({ look }) => look.label);

const mina = { talents: ["Mina"], changeMinutes: 20, shootingMinutes: 20 };
const teo = { talents: ["Teo"], changeMinutes: 20, shootingMinutes: 20 };
/** Two talents by turns are shot without a gap, one after the other each look waits for a change. */
const byTurns = [1, 2, 3, 4].map((label) => sampleLook(label, label < 3 ? mina : teo));

test("talents take turns where that ends sooner, and what is saved, proved and cannot be beaten is said", () => {
  const day = ordered(byTurns);
  expect(labels(day)).toEqual([1, 3, 2, 4]);
  // 20 to dress the first, then four shots of 20: 100 minutes; as given 20+20, +40, 20, +20 make 140 less what overlaps.
  expect((day.plan.ends - 9 / 24) * 1440).toBeCloseTo(100, 9);
  expect(day.minutesSaved).toBe(40);
  expect(day.isProvedBest).toBe(true);
  expect(day.endsNotBefore).toBe(day.plan.ends);
});

test("an order that cannot be bettered stays as it is", () => {
  const looks = [sampleLook(1, mina), sampleLook(2, teo), sampleLook(3, mina)];
  const day = ordered(looks);
  expect(labels(day)).toEqual([1, 2, 3]);
  expect(day.minutesSaved).toBe(0);
  expect(day.plan).toEqual((dayPlan(sampleDay(looks)) as { value: unknown }).value);
});

describe("Fixed and After are kept", () => {
  test.each([
    ["first", { fixed: "first" as const }, 0],
    ["last", { fixed: "last" as const }, 3],
    ["a place", { fixed: 2 }, 1],
  ])("%s", (_, said, place) => {
    const looks = byTurns.map((look) => (look.label === 4 ? { ...look, ...said } : look));
    expect(labels(ordered(looks))[place]).toBe(4);
  });

  test("a look comes after those it must come after, also where the order given has it before them", () => {
    const looks = byTurns.map((look) => (look.label === 1 ? { ...look, after: ["4"] } : look));
    const day = ordered(looks);
    expect(labels(day).indexOf(1)).toBeGreaterThan(labels(day).indexOf(4));
    expect(day.minutesSaved).toBeNull();
  });

  test("a Fixed that After rules out is one sentence", () => {
    const looks = [sampleLook(1, mina), sampleLook(2, { ...teo, after: ["1"], fixed: "first" })];
    expect(problem(looks)).toBe(
      'Fixed of look 2: "first" cannot be used; give a place that its After and the other fixed looks allow.',
    );
  });

  test("of two that cannot both be, the later place is named", () => {
    const looks = [
      sampleLook(1, { ...mina, fixed: 3 }),
      sampleLook(2, { ...teo, after: ["1"], fixed: 2 }),
      sampleLook(3, mina),
    ];
    expect(problem(looks)).toMatch(/^Fixed of look 1: "3" cannot be used/);
  });
});

describe("what has been shot", () => {
  const shot = sampleLook(9, { ...teo, shotAt: 9.5 / 24, fixed: "last", after: ["1"] });

  test("stands first, whatever its Fixed and After say", () => {
    expect(labels(ordered([...byTurns, shot]))[0]).toBe(9);
  });

  test("takes its place away from a look that was to be first", () => {
    const looks = byTurns.map((look) => (look.label === 3 ? { ...look, fixed: "first" as const } : look));
    expect(labels(ordered([...looks, { ...shot, fixed: null }]))[0]).toBe(9);
  });
});

test.each([
  ["two dates", [sampleLook(1, { date: 46086 }), sampleLook(2, { date: 46087 })], /filter one day/],
  ["a look on two rows", [sampleLook(1), sampleLook(1)], /stands on two rows/],
  ["an After that goes round", [sampleLook(1, { after: ["2"] }), sampleLook(2, { after: ["1"] })], /in a circle/],
  ["an After that is not there", [sampleLook(1, { after: ["8"] })], /^After of look 1: "8"/],
  ["one place for two looks", [sampleLook(1, { fixed: 1 }), sampleLook(2, { fixed: "first" })], /^Fixed of look 2/],
  ["a day too long to count", [sampleLook(1, { shootingMinutes: 1e308 })], /^The day is too large/],
])("%s is refused as by the plan in the order given", (_, looks, sentence) => {
  expect(problem(looks)).toMatch(sentence);
});

test("a crew that lacks what a look needs is refused, also where the order given contradicts After", () => {
  const looks = [sampleLook(1, { ...mina, after: ["2"] }), sampleLook(2, teo)];
  expect(problem(looks, { crew: { ...smallestCrew, dressers: 0 } })).toMatch(/^people, dressers/);
});

test("a day without looks is an empty plan, and proved", () => {
  const day = ordered([]);
  expect(day.plan.looks).toEqual([]);
  expect(day).toMatchObject({ minutesSaved: 0, isProvedBest: true, endsNotBefore: 9 / 24 });
});

test("a hundred looks come back once each, no later than given", () => {
  const looks = Array.from({ length: 100 }, (_, index) =>
    sampleLook(index + 1, {
      talents: [["Ines", "Teo", "Mina"][(index * index) % 3]!],
      changeMinutes: 5 + ((index * 7) % 20),
      shootingMinutes: 10 + ((index * 11) % 25),
      fixed: index === 60 ? "last" : null,
    }),
  );
  const day = lookOrder(sampleDay(looks), { tries: 500, beginnings: 0, seed: 1, nearestWidth: 0 });
  if (!day.ok) throw new Error(sayProblem(day.problem));
  expect([...labels(day.value)].sort((a, b) => Number(a) - Number(b))).toEqual(looks.map(({ label }) => label));
  expect(labels(day.value).at(-1)).toBe(61);
  expect(day.value.plan.ends).toBeGreaterThanOrEqual(day.value.endsNotBefore);
});
