import fc from "fast-check";
import type { Day } from "../../../src/domain/day/day";
import { dayPlan } from "../../../src/domain/day/dayPlan";
import { nextLook } from "../../../src/domain/day/nextLook";
import { smallestCrew } from "../../../src/domain/day/smallestCrew";
import { sayProblem } from "../../../src/domain/wording";
import { sampleDay, sampleLook } from "./sampleLook";
import { sayClock } from "./sayClock";

const at = (hours: number, minutes = 0, seconds = 0): number => (hours * 3600 + minutes * 60 + seconds) / 86400;
const mina = { talents: ["Mina"] };
const teo = { talents: ["Teo"] };

/** "2 09:25 25": the look, change from, minutes until it is called. */
function said(day: Day, now: number): string {
  const next = nextLook(day, now);
  if (!next.ok) return sayProblem(next.problem);
  if (next.value === null) return "none";
  const { planned, minutesUntilCalled } = next.value;
  return `${planned.look.label} ${sayClock(planned.changeFrom)} ${minutesUntilCalled}`;
}

const looks = (shotAt: readonly (number | null)[]) => [
  sampleLook(1, { ...mina, changeMinutes: 15, shootingMinutes: 30, shotAt: shotAt[0] ?? null }),
  sampleLook(2, { ...teo, changeMinutes: 20, shootingMinutes: 25, shotAt: shotAt[1] ?? null }),
  sampleLook(3, { ...mina, changeMinutes: 10, shootingMinutes: 30, shotAt: shotAt[2] ?? null }),
];

test.each([
  ["before call the day is the plan's, and minutes count from now", [], at(8, 40), "1 09:00 35"],
  [
    "while a look is shot the next talent changes, and is called when the camera is free",
    [at(9, 20)],
    at(9, 25),
    "2 09:25 25",
  ],
  ["later than planned, everything moves with now", [at(9, 20)], at(10, 10), "2 10:10 20"],
  ["who is being shot changes after the shot", [at(9, 15), at(9, 50)], at(9, 40), "2 09:40 20"],
  ["a talent still on the set is waited for", [at(9, 15), at(9, 20)], at(9, 25), "3 09:45 30"],
  ["a shot said to begin after now has not happened yet", [at(9, 20), at(12)], at(9, 25), "2 09:25 25"],
  ["what is left of a minute does not count", [at(9, 20)], at(9, 25, 30), "2 565.5 min 24"],
  ["every look shot: there is no next", [at(9, 15), at(9, 45), at(10, 10)], at(11), "none"],
] as const)("%s", (_, shotAt, now, expected) => {
  const day = sampleDay(looks(shotAt));
  expect(said(day, now)).toBe(expected);
});

test("the looks that are shot need not be the first of the order", () => {
  expect(said(sampleDay(looks([null, at(9, 20)])), at(9, 45))).toBe("1 09:45 15");
});

test("past midnight, a small hour is the next morning's", () => {
  const night = sampleDay(looks([at(23, 30)]), { call: at(22) });
  expect(said(night, at(0, 10))).toBe("2 24:10 20");
});

test("a meal that falls due is kept before the next look", () => {
  const crew = { ...smallestCrew, meal: { afterHours: 1, minutes: 30 } };
  // The shot ends at 10:00, when the meal is due; the change would reach into it.
  expect(said(sampleDay(looks([at(9, 30)]), { crew }), at(9, 50))).toBe("2 10:30 60");
});

test("problems are those of the plan", () => {
  expect(said(sampleDay([sampleLook(1, { after: ["9"] })]), at(9))).toMatch(/^After of look 1: "9"/);
});

test("with nothing shot and no meal, the next look is the first of a plan whose call is now", () => {
  const anyLook = fc.record({
    talents: fc.subarray(["Mina", "Teo", "Ada"]),
    changeMinutes: fc.nat(30),
    hairMakeupMinutes: fc.nat(40),
    shootingMinutes: fc.nat(40),
    makeupFirst: fc.boolean(),
    arrivesAt: fc.option(fc.integer({ min: 540, max: 720 }).map((minute) => minute / 1440)),
  });
  fc.assert(
    fc.property(
      fc.array(anyLook, { minLength: 1, maxLength: 5 }),
      fc.integer({ min: 540, max: 760 }),
      (rows, minute) => {
        const day = sampleDay(rows.map((row, index) => sampleLook(index + 1, row)));
        const now = minute / 1440;
        const plan = dayPlan({ ...day, call: now });
        if (!plan.ok) throw new Error(sayProblem(plan.problem));
        const [first] = plan.value.looks;
        const minutes = Math.round((first!.shootFrom - now) * 1440);
        expect(said(day, now)).toBe(`1 ${sayClock(first!.changeFrom)} ${minutes}`);
      },
    ),
  );
});
