// DAYPLAN, DAYFIT, NEXTLOOK and LOOKORDER worked out a second time, look by look and order by order, from what their documentation promises.
import fc from "fast-check";
import { standInHost } from "../standInHost";
import { drawnFrom, type Drawn } from "./drawn";
import { resultOf } from "./resultOf";
import { secondDay, type SecondCrew, type SecondLook } from "./secondDay";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

const CALL = 9 * 60;
const DAY_MINUTES = 1440;

function forDays(
  most: number,
  runs: number,
  holds: (looks: readonly SecondLook[], crew: SecondCrew, people: unknown, draw: Drawn) => void,
): void {
  fc.assert(
    fc.property(fc.gen(), (value) => {
      const draw = drawnFrom(value);
      const names = ["Mina", "Teo", "Ana"].slice(0, draw.whole(1, 3));
      const looks = Array.from({ length: draw.whole(1, most) }, (_, index) => ({
        look: index + 1,
        talents: draw.often(10) ? names.slice(0, 2) : [draw.one(names)],
        change: draw.one([0, 5, 10, 20]),
        hair: draw.one([0, 0, 10, 30]),
        shooting: draw.one([15, 20, 45]),
        isMakeupFirst: draw.often(70),
      }));
      const crew = {
        dressers: draw.whole(1, 3),
        chairs: draw.whole(1, 2),
        mealAfter: draw.one([null, null, 60, 120, 360]),
        mealMinutes: 30,
      };
      const people = draw.shuffled([
        ["Dressers", crew.dressers],
        ["hair and make-up chairs", crew.chairs],
        ...(crew.mealAfter === null
          ? []
          : [
              ["meal after hours", crew.mealAfter / 60],
              ["Meal minutes", 30],
            ]),
      ]);
      holds(looks, crew, people, draw);
    }),
    { numRuns: runs, endOnFailure: true },
  );
}

/** The looks as a sheet has them, in an order of rows and columns of its own, Order saying theirs. */
function sheetOf(looks: readonly SecondLook[], draw: Drawn): unknown[][] {
  const columns = draw.shuffled<readonly [string, (look: SecondLook) => unknown]>([
    ["Look", ({ look }) => look],
    ["Talent", ({ talents }) => talents.join(draw.one([", ", " & ", "; "]))],
    ["Change", ({ change }) => (change === 0 ? draw.one([0, null, ""]) : change)],
    ["Hair and make-up", ({ hair }) => (hair === 0 ? draw.one([null, ""]) : draw.one([hair, `${hair} min`]))],
    ["Shooting", ({ shooting }) => shooting],
    ["Make-up first", ({ isMakeupFirst }) => (isMakeupFirst ? draw.one(["yes", null, true]) : draw.one(["no", false]))],
    ["Order", (look) => looks.indexOf(look) + 1],
  ]);
  return [
    columns.map(([heading]) => heading),
    ...draw.shuffled(looks).map((look) => columns.map(([, cell]) => cell(look))),
  ];
}

/** A time of day to the second, as minutes are no binary fractions of a day. */
function time(minutes: number): unknown {
  return expect.closeTo(minutes / DAY_MINUTES, 6);
}

test("DAYPLAN and DAYFIT: each look's preparation and shot, and what is left until wrap", () => {
  forDays(6, 400, (looks, crew, people, draw) => {
    const call = draw.one<unknown>([0.375, "09:00", "9am", "9.00 am"]);
    const cells = sheetOf(looks, draw);
    const timings = secondDay(looks, CALL, crew);
    const [headings, ...rows] = resultOf("DAYPLAN", cells, call, people) as unknown[][];
    expect(headings).toEqual([
      "Look",
      "Talent",
      "Change from",
      "Ready by",
      "Shoot from",
      "Shoot until",
      "Waits for",
      "Spare",
    ]);
    expect(rows.map((row) => row.filter((_, column) => column !== 1 && column !== 6))).toEqual(
      timings.map(({ from, ready, start, end }, index) => [
        looks[index]!.look,
        ...[from, ready, start, end].map(time),
        expect.closeTo(start - ready, 3),
      ]),
    );
    const last = Math.max(...timings.map(({ end }) => end));
    expect(resultOf("DAYFIT", cells, call, 0.75, people)).toBeCloseTo(18 * 60 - last, 3);
  });
});

test("LOOKORDER: no order that keeps After and Fixed ends sooner", () => {
  forDays(5, 120, (looks, crew, people, draw) => {
    const after = looks.map(({ look }) =>
      draw.often(30) ? [draw.whole(1, looks.length)].filter((other) => other !== look) : [],
    );
    const fixed = looks.map(() => (draw.often(15) ? draw.one(["first", "last", draw.whole(1, looks.length)]) : null));
    const placeOf = (place: string | number): number =>
      place === "first" ? 0 : place === "last" ? looks.length - 1 : Number(place) - 1;
    let soonest = Infinity;
    const tryFrom = (order: readonly SecondLook[]): void => {
      if (order.length === looks.length) {
        soonest = Math.min(soonest, Math.max(...secondDay(order, CALL, crew).map(({ end }) => end)));
        return;
      }
      for (const [index, look] of looks.entries()) {
        const isReady = after[index]!.every((other) => order.some((before) => before.look === other));
        const place = fixed[index];
        if (order.includes(look) || !isReady || (typeof place !== "object" && placeOf(place!) !== order.length))
          continue;
        tryFrom([...order, look]);
      }
    };
    tryFrom([]);
    const cells = [
      ["Look", "Talent", "Change", "Hair and make-up", "Shooting", "Make-up first", "After", "Fixed"],
      ...looks.map((look, index) => [
        look.look,
        look.talents.join(", "),
        look.change,
        look.hair,
        look.shooting,
        look.isMakeupFirst ? "yes" : "no",
        after[index]!.join("; "),
        fixed[index],
      ]),
    ];
    if (soonest === Infinity) {
      expect(() => resultOf("LOOKORDER", cells, 0.375, people)).toThrow(/^(Fixed of look|After goes round)/);
      return;
    }
    const rows = (resultOf("LOOKORDER", cells, 0.375, people) as unknown[][]).slice(1);
    expect(Math.max(...rows.map((row) => row[5] as number)) * DAY_MINUTES).toBeCloseTo(soonest, 2);
    const found = rows.map((row) => looks.find(({ look }) => look === row[0])!);
    expect(new Set(found).size).toBe(looks.length);
    const again = secondDay(found, CALL, crew);
    expect(rows.map((row) => row[5])).toEqual(again.map(({ end }) => time(end)));
  });
});

test("NEXTLOOK: the first look not shot, when its preparation can begin from now, and the minutes until its shot can", () => {
  forDays(5, 300, (looks, crew, _people, draw) => {
    const planned = secondDay(looks, CALL, { ...crew, mealAfter: null });
    const shot = draw.whole(0, looks.length - 1);
    const next = looks[shot]!;
    const lastShot = shot === 0 ? CALL : planned[shot - 1]!.start;
    const now = lastShot + draw.whole(0, 60);
    const done = looks.slice(0, shot).map((look, index) => ({ look, end: planned[index]!.end }));
    const freeOf = (talent: string): number =>
      Math.max(CALL, ...done.filter(({ look }) => look.talents.includes(talent)).map(({ end }) => end));
    const from = Math.max(now, ...next.talents.map(freeOf));
    const start = Math.max(from + next.hair + next.change, CALL, ...done.map(({ end }) => end));
    const cells = [
      ["Look", "Talent", "Change", "Hair and make-up", "Shooting", "Shot at"],
      ...looks.map((look, index) => [
        look.look,
        look.talents.join(" & "),
        look.change,
        look.hair,
        look.shooting,
        index < shot ? planned[index]!.start / DAY_MINUTES : draw.one([null, "", 0]),
      ]),
    ];
    expect(resultOf("NEXTLOOK", cells, draw.one([now, now + 46_100 * DAY_MINUTES]) / DAY_MINUTES, "09:00")).toEqual([
      ["Look", "Talent", "Change from", "Minutes"],
      [next.look, next.talents.join(" & "), time(from), Math.floor(start - now)],
    ]);
  });
});
