import { dayPlan } from "../../../src/domain/day/dayPlan";
import type { Day } from "../../../src/domain/day/day";
import { smallestCrew } from "../../../src/domain/day/smallestCrew";
import { sayWait } from "../../../src/domain/day/sayWait";
import { sayProblem } from "../../../src/domain/wording";
import { sampleDay, sampleLook } from "./sampleLook";
import { sayClock } from "./sayClock";

/** Each look of a plan on one line: look, change from-ready by, shot from-until, what it waits for, spare. */
function lines(day: Day): string[] | string {
  const plan = dayPlan(day);
  if (!plan.ok) return sayProblem(plan.problem);
  return plan.value.looks.map(({ look, changeFrom, readyBy, shootFrom, shootUntil, waitsFor, minutesSpare }) => {
    const [a, b, c, d] = [changeFrom, readyBy, shootFrom, shootUntil].map(sayClock);
    return `${look.label} ${a}-${b} ${c}-${d} ${sayWait(waitsFor)} ${minutesSpare}`;
  });
}

const mina = { talents: ["Mina"] };
const teo = { talents: ["Teo"] };

describe("worked by hand", () => {
  test("the next talent changes while this one is shot, and nobody changes while being shot", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 15, shootingMinutes: 30 }),
      sampleLook(2, { ...teo, changeMinutes: 20, shootingMinutes: 25 }),
      sampleLook(3, { ...mina, changeMinutes: 10, shootingMinutes: 30 }),
    ];
    expect(lines(sampleDay(looks))).toEqual([
      "1 09:00-09:15 09:15-09:45 call 0",
      "2 09:15-09:35 09:45-10:10 camera, look 1 10",
      "3 09:45-09:55 10:10-10:40 camera, look 2 15",
    ]);
  });

  test("make-up comes before the change unless the look says otherwise, and both are preparation", () => {
    const work = { hairMakeupMinutes: 40, changeMinutes: 10, shootingMinutes: 20 };
    const looks = [sampleLook(1, { ...mina, ...work }), sampleLook(2, { ...teo, ...work, makeupFirst: false })];
    const plan = dayPlan(sampleDay(looks));
    if (!plan.ok) throw new Error("no plan");
    const steps = plan.value.looks.map((look) =>
      look.steps.map((it) => `${it.kind} ${sayClock(it.from)}-${sayClock(it.until)}`),
    );
    expect(steps).toEqual([
      ["hair and make-up 09:00-09:40", "change 09:40-09:50", "shot 09:50-10:10"],
      ["change 09:50-10:00", "hair and make-up 10:00-10:40", "shot 10:40-11:00"],
    ]);
    expect(lines(sampleDay(looks))).toEqual([
      "1 09:00-09:50 09:50-10:10 call 0",
      "2 09:50-10:40 10:40-11:00 dresser, look 1 0",
    ]);
  });

  test("no later look is fitted into a gap before an earlier one", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 10, shootingMinutes: 10, arrivesAt: 10 / 24 }),
      sampleLook(2, { ...teo, changeMinutes: 10, shootingMinutes: 10 }),
    ];
    expect(lines(sampleDay(looks))).toEqual([
      "1 10:00-10:10 10:10-10:20 Mina arrives 0",
      "2 10:10-10:20 10:20-10:30 dresser, look 1 0",
    ]);
  });

  test("a second dresser takes the next look at once", () => {
    const looks = [1, 2].map((label) => sampleLook(label, { changeMinutes: 20, shootingMinutes: 10 }));
    const crew = { ...smallestCrew, dressers: 2 };
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:20 09:20-09:30 call 0",
      "2 09:00-09:20 09:30-09:40 camera, look 1 10",
    ]);
  });

  test("with two cameras the shots still begin in order", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 30, shootingMinutes: 30 }),
      sampleLook(2, { ...teo, shootingMinutes: 10 }),
    ];
    const crew = { ...smallestCrew, cameras: 2 };
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:30 09:30-10:00 call 0",
      "2 09:00-09:00 09:30-09:40 order, look 1 30",
    ]);
  });

  test("a camera crosses between sets, and a set that is not said needs no crossing", () => {
    const looks = [
      sampleLook(1, { ...mina, set: "roof", shootingMinutes: 20 }),
      sampleLook(2, { ...teo, set: "stairs", shootingMinutes: 20 }),
      sampleLook(3, { ...mina, shootingMinutes: 20 }),
      sampleLook(4, { ...teo, set: "stairs", shootingMinutes: 20 }),
    ];
    const crew = { ...smallestCrew, crossingMinutes: 15 };
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:00 09:00-09:20 call 0",
      "2 09:00-09:00 09:35-09:55 crossing from look 1 35",
      "3 09:20-09:20 09:55-10:15 camera, look 2 35",
      "4 09:55-09:55 10:15-10:35 camera, look 3 20",
    ]);
  });

  test("of two looks that list one piece the later is changed once the earlier is shot, made up meanwhile", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 10, shootingMinutes: 30, pieces: ["P1", "P2"] }),
      sampleLook(2, { ...teo, hairMakeupMinutes: 20, changeMinutes: 15, shootingMinutes: 20, pieces: ["P2"] }),
      sampleLook(3, { talents: ["Ada"], shootingMinutes: 20, pieces: ["P2", "P3"] }),
    ];
    const crew = { ...smallestCrew, dressers: 2, cameras: 2 };
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:10 09:10-09:40 call 0",
      "2 09:00-09:55 09:55-10:15 piece P2, look 1 0",
      "3 09:00-09:00 10:15-10:35 piece P2, look 2 75",
    ]);
  });

  test("undressing and handing a piece over takes its minutes, not over the meal, and nothing where the same talent keeps it on", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 10, shootingMinutes: 30, pieces: ["P1"] }),
      sampleLook(2, { ...teo, changeMinutes: 15, shootingMinutes: 20, pieces: ["P1"] }),
      sampleLook(3, { ...teo, changeMinutes: 5, shootingMinutes: 20, pieces: ["P1"] }),
      sampleLook(4, { ...mina, changeMinutes: 10, shootingMinutes: 20, pieces: ["P1"] }),
    ];
    const crew = { ...smallestCrew, handOverMinutes: 8 };
    // 1 is shot until 09:40 and handed over by 09:48; Teo keeps it on at 10:23; 10:48 and 8 minutes is 10:56.
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:10 09:10-09:40 call 0",
      "2 09:48-10:03 10:03-10:23 piece P1, look 1 0",
      "3 10:23-10:28 10:28-10:48 Teo, look 2 0",
      "4 10:56-11:06 11:06-11:26 piece P1, look 3 0",
    ]);
    // A meal due at 10:50 begins at 10:48, when nothing can be handed over before it: 11:18 and 8 minutes.
    const meal = { afterHours: 11 / 6, minutes: 30 };
    expect(lines(sampleDay(looks, { crew: { ...crew, meal } })).slice(3)).toEqual([
      "4 11:26-11:36 11:36-11:56 piece P1, look 3 0",
    ]);
  });

  test("a set that is both inside and outside is two places, and where no set is said inside and outside are", () => {
    const looks = [
      sampleLook(1, { ...mina, set: "barn", where: "indoors", shootingMinutes: 20 }),
      sampleLook(2, { ...teo, set: "barn", where: "outdoors", shootingMinutes: 20 }),
      sampleLook(3, { ...mina, where: "outdoors", shootingMinutes: 20 }),
      sampleLook(4, { ...teo, where: "outdoors", shootingMinutes: 20 }),
      sampleLook(5, { ...mina, set: "roof", where: "outdoors", shootingMinutes: 20 }),
      sampleLook(6, { ...teo, set: "roof", shootingMinutes: 20 }),
    ];
    const crew = { ...smallestCrew, crossingMinutes: 15 };
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:00 09:00-09:20 call 0",
      "2 09:00-09:00 09:35-09:55 crossing from look 1 35",
      "3 09:20-09:20 10:10-10:30 crossing from look 2 50",
      "4 09:55-09:55 10:30-10:50 camera, look 3 35",
      "5 10:30-10:30 11:05-11:25 crossing from look 4 35",
      "6 10:50-10:50 11:25-11:45 camera, look 5 35",
    ]);
  });

  test("several talents in one look are waited for together", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 10, shootingMinutes: 50 }),
      sampleLook(2, { talents: ["Teo", "Mina"], changeMinutes: 15, shootingMinutes: 10 }),
    ];
    expect(lines(sampleDay(looks))).toEqual([
      "1 09:00-09:10 09:10-10:00 call 0",
      "2 10:00-10:15 10:15-10:25 Mina, look 1 0",
    ]);
  });

  test("the change is the one from the talent's last look; a first look, and a pair left out, take the look's own", () => {
    const changes = new Map([["1", new Map([["3", 5]])]]);
    const looks = [1, 2, 3, 4].map((label) =>
      sampleLook(label, { ...(label % 2 === 1 ? mina : teo), changeMinutes: 20, shootingMinutes: 30 }),
    );
    expect(lines(sampleDay(looks, { changes }))).toEqual([
      "1 09:00-09:20 09:20-09:50 call 0",
      "2 09:20-09:40 09:50-10:20 camera, look 1 10",
      "3 09:50-09:55 10:20-10:50 camera, look 2 25",
      "4 10:20-10:40 10:50-11:20 camera, look 3 10",
    ]);
  });

  test("looks go by Order, ties and blanks by row, whatever has no Order last", () => {
    const looks = [
      sampleLook("a", { shootingMinutes: 10 }),
      sampleLook("b", { shootingMinutes: 10, order: 2 }),
      sampleLook("c", { shootingMinutes: 10, order: 1 }),
      sampleLook("d", { shootingMinutes: 10, order: 2 }),
    ];
    const plan = dayPlan(sampleDay(looks));
    expect(plan.ok && plan.value.looks.map(({ look }) => look.label)).toEqual(["c", "b", "d", "a"]);
  });

  test("work past midnight goes on counting, and a time long before call is the next morning's", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 30, shootingMinutes: 240 }),
      sampleLook(2, { ...teo, changeMinutes: 30, shootingMinutes: 60, arrivesAt: 1 / 24 }),
    ];
    expect(lines(sampleDay(looks, { call: 20 / 24 }))).toEqual([
      "1 20:00-20:30 20:30-24:30 call 0",
      "2 25:00-25:30 25:30-26:30 Teo arrives 0",
    ]);
  });

  test("seconds are kept: a change of 7.5 minutes ends on the half minute", () => {
    const plan = dayPlan(sampleDay([sampleLook(1, { changeMinutes: 7.5, shootingMinutes: 10 })]));
    expect(plan.ok && plan.value.looks[0]!.readyBy).toBe((9 * 3600 + 450) / 86400);
  });

  test("09:30 comes back as exactly what the workbook keeps for 09:30", () => {
    const looks = [1, 2, 3].map((label) => sampleLook(label, { changeMinutes: 0, shootingMinutes: 10 }));
    const plan = dayPlan(sampleDay(looks));
    expect(plan.ok && plan.value.ends).toBe((9 * 3600 + 30 * 60) / 86400);
  });
});

describe("arrivals", () => {
  test("an arrival on one row of a talent holds for the rows where it is blank; another time on a row of its own holds there", () => {
    const looks = [
      sampleLook(1, { ...mina, shootingMinutes: 10 }),
      sampleLook(2, { ...mina, shootingMinutes: 10, arrivesAt: 9.5 / 24 }),
      sampleLook(3, { ...mina, shootingMinutes: 10, arrivesAt: 11 / 24 }),
    ];
    expect(lines(sampleDay(looks))).toEqual([
      "1 09:30-09:30 09:30-09:40 Mina arrives 0",
      "2 09:40-09:40 09:40-09:50 Mina, look 1 0",
      "3 11:00-11:00 11:00-11:10 Mina arrives 0",
    ]);
  });

  test("who arrives before call waits for call", () => {
    const looks = [sampleLook(1, { ...mina, shootingMinutes: 10, arrivesAt: 8 / 24 })];
    expect(lines(sampleDay(looks))).toEqual(["1 09:00-09:00 09:00-09:10 call 0"]);
  });
});

describe("After", () => {
  test("a shot begins when the looks that must come before it have been shot, though a second camera is free", () => {
    const looks = [
      sampleLook(1, { ...mina, shootingMinutes: 30 }),
      sampleLook(2, { ...teo, changeMinutes: 5, shootingMinutes: 10, after: ["1"] }),
    ];
    const crew = { ...smallestCrew, cameras: 2 };
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:00 09:00-09:30 call 0",
      "2 09:00-09:05 09:30-09:40 look 1 25",
    ]);
  });

  test.each([
    [
      "an order that contradicts it",
      [sampleLook(2, { after: ["5"] }), sampleLook(5)],
      "Look 2 must come after look 5, but stands before it; change its Order or its After.",
    ],
    [
      "a circle",
      [sampleLook(2, { after: ["5"] }), sampleLook(5, { after: ["2"] })],
      "After goes round in a circle, look 2 after look 5 after look 2; take one of them out.",
    ],
    [
      "itself",
      [sampleLook(2, { after: ["2"] })],
      "After goes round in a circle, look 2 after look 2; take one of them out.",
    ],
    [
      "a look that is not there",
      [sampleLook(2, { after: ["9"] })],
      'After of look 2: "9" cannot be used; give the number of a look of this day.',
    ],
  ])("%s is one sentence", (_, looks, sentence) => {
    expect(lines(sampleDay(looks))).toBe(sentence);
  });

  test("a long chain of looks is no circle and exhausts nothing", () => {
    const looks = Array.from({ length: 5000 }, (_, index) =>
      sampleLook(index + 1, { after: index === 0 ? [] : [String(index)] }),
    );
    expect(lines(sampleDay(looks))).toHaveLength(5000);
  });
});

describe("what has happened", () => {
  test("a look that was shot comes first and at its time, and its preparation had ended by then", () => {
    const looks = [
      sampleLook(1, { ...mina, changeMinutes: 20, shootingMinutes: 30 }),
      sampleLook(2, { ...teo, hairMakeupMinutes: 10, changeMinutes: 15, shootingMinutes: 30, shotAt: 9.25 / 24 }),
    ];
    expect(lines(sampleDay(looks))).toEqual([
      "2 08:50-09:15 09:15-09:45 shot at 0",
      "1 09:15-09:35 09:45-10:15 camera, look 2 10",
    ]);
  });

  test("a shot that began late leaves its look ready in time", () => {
    const looks = [sampleLook(1, { ...mina, changeMinutes: 20, shootingMinutes: 30, shotAt: 10 / 24 })];
    expect(lines(sampleDay(looks))).toEqual(["1 09:00-09:20 10:00-10:30 shot at 40"]);
  });

  test("it is past contradicting After", () => {
    const looks = [
      sampleLook(1, { shootingMinutes: 10 }),
      sampleLook(2, { shootingMinutes: 10, after: ["1"], shotAt: 9.5 / 24 }),
    ];
    expect(lines(sampleDay(looks))).toEqual([
      "2 09:00-09:00 09:30-09:40 shot at 30",
      "1 09:00-09:00 09:40-09:50 camera, look 2 40",
    ]);
  });
});

describe("the meal", () => {
  const meal = { afterHours: 1, minutes: 30 };
  const looks = [1, 2, 3].map((label) =>
    sampleLook(label, { changeMinutes: 20, shootingMinutes: 25, talents: [`T${label}`] }),
  );

  test("it begins at the latest end of a step that is not late, and what would span it waits", () => {
    const crew = { ...smallestCrew, meal };
    const plan = dayPlan(sampleDay(looks, { crew }));
    // Changes end 09:20, 09:40, 10:00; shots 09:45, 10:10, 10:35: the last end up to 10:00 is 10:00 itself.
    expect(plan.ok && plan.value.meal).toEqual({ from: 10 / 24, until: 10.5 / 24, due: 10 / 24, minutesLate: 0 });
    expect(lines(sampleDay(looks, { crew }))).toEqual([
      "1 09:00-09:20 09:20-09:45 call 0",
      "2 09:20-09:40 10:30-10:55 meal 50",
      "3 09:40-10:00 10:55-11:20 camera, look 2 55",
    ]);
  });

  test("where nothing ends in time it begins at the first end, and says how late that is", () => {
    const crew = { ...smallestCrew, meal };
    const long = [sampleLook(1, { shootingMinutes: 80 }), sampleLook(2, { shootingMinutes: 10 })];
    const plan = dayPlan(sampleDay(long, { crew }));
    expect(plan.ok && plan.value.meal).toEqual({
      from: (10 + 1 / 3) / 24,
      until: (10 + 5 / 6) / 24,
      due: 10 / 24,
      minutesLate: 20,
    });
    expect(lines(sampleDay(long, { crew }))).toEqual([
      "1 09:00-09:00 09:00-10:20 call 0",
      "2 09:00-09:00 10:50-11:00 meal 110",
    ]);
  });

  test("a day that is over before it is due keeps none", () => {
    const plan = dayPlan(sampleDay([sampleLook(1, { shootingMinutes: 60 })], { crew: { ...smallestCrew, meal } }));
    expect(plan.ok && plan.value.meal).toBeNull();
  });

  test("nobody crosses to another set during it", () => {
    const crew = { ...smallestCrew, meal, crossingMinutes: 10 };
    const sets = [sampleLook(1, { set: "a", shootingMinutes: 60 }), sampleLook(2, { set: "b", shootingMinutes: 10 })];
    expect(lines(sampleDay(sets, { crew }))).toEqual([
      "1 09:00-09:00 09:00-10:00 call 0",
      "2 09:00-09:00 10:40-10:50 crossing from look 1 100",
    ]);
  });
});

describe("what no plan can be made of", () => {
  test.each([
    [
      "two dates",
      [sampleLook(1, { date: 46086 }), sampleLook(2, { date: 46087 })],
      "looks holds rows of 2026-03-05 and of 2026-03-06; filter one day.",
    ],
    [
      "one look on two rows",
      [sampleLook(1), sampleLook(1)],
      'Look 1 stands on two rows; give it one row, with its talents together, such as "Ana & Ben".',
    ],
    [
      "a place that does not exist",
      [sampleLook(1, { fixed: 3 }), sampleLook(2)],
      'Fixed of look 1: "3" cannot be used; give first, last or a whole number from 1 to 2, the number of looks.',
    ],
    [
      "one place for two looks",
      [sampleLook(1, { fixed: "last" }), sampleLook(2, { fixed: 2 })],
      'Fixed of look 2: "2" cannot be used; give a place that no other look has.',
    ],
  ])("%s", (_, looks, sentence) => {
    expect(lines(sampleDay(looks))).toBe(sentence);
  });

  test.each([
    ["dressers", sampleLook(3, { changeMinutes: 5 }), "look 3 has a change"],
    ["chairs", sampleLook(3, { hairMakeupMinutes: 5 }), "look 3 has hair and make-up"],
    ["cameras", sampleLook(3), "look 3 is to be shot"],
  ])("no %s where one is needed", (label, look, why) => {
    const crew = { ...smallestCrew, [label]: 0 };
    expect(lines(sampleDay([look], { crew }))).toBe(
      `people, ${label}: "0" cannot be used; give 1 or more, since ${why}.`,
    );
  });

  test("a day too long to count", () => {
    expect(lines(sampleDay([sampleLook(1, { shootingMinutes: 1e308 })]))).toMatch(/^The day is too large/);
  });
});

test("the same date on every row, or none, is one day; a blank one too", () => {
  expect(
    lines(sampleDay([sampleLook(1, { date: 46086 }), sampleLook(2), sampleLook(3, { date: 46086 })])),
  ).toHaveLength(3);
});

test("Fixed does not move a look: the plan keeps the order given", () => {
  const plan = dayPlan(sampleDay([sampleLook(1, { fixed: "last" }), sampleLook(2)]));
  expect(plan.ok && plan.value.looks.map(({ look }) => look.label)).toEqual([1, 2]);
});

test("no chair is needed where nobody is made up, and a million dressers are as good as one a look", () => {
  const looks = [sampleLook(1, { changeMinutes: 5, shootingMinutes: 5 })];
  const crew = { ...smallestCrew, chairs: 0, dressers: 1e15 };
  expect(lines(sampleDay(looks, { crew }))).toEqual(["1 09:00-09:05 09:05-09:10 call 0"]);
});

test("a day without looks is an empty plan", () => {
  expect(dayPlan(sampleDay([]))).toEqual({ ok: true, value: { looks: [], call: 9 / 24, ends: 9 / 24, meal: null } });
});
