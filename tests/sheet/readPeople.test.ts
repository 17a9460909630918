import { sayProblem } from "../../src/domain/wording";
import { readPeople } from "../../src/sheet/readPeople";

const said = (cells: unknown[][]): string => {
  const outcome = readPeople(cells);
  return outcome.ok ? "" : sayProblem(outcome.problem);
};

test("left out, there is one dresser, one chair, one camera and no meal", () => {
  const smallest = { dressers: 1, chairs: 1, cameras: 1, meal: null, crossingMinutes: 0, handOverMinutes: 0 };
  expect(readPeople(null)).toEqual({ ok: true, value: smallest });
  expect(
    readPeople([
      ["", ""],
      [0, 0],
      [null, null],
    ]),
  ).toEqual({ ok: true, value: smallest });
});

test("labels are read in any order, under headings or not, whatever their case", () => {
  const crew = {
    dressers: 2,
    chairs: 3,
    cameras: 2,
    meal: { afterHours: 6, minutes: 45 },
    crossingMinutes: 15,
    handOverMinutes: 4,
  };
  const rows = [
    ["Crossing minutes between sets", "15 min"],
    ["MEAL MINUTES", 45],
    ["meal after hours", 6],
    ["Hair and make-up", 3],
    ["cameras", "2"],
    ["Dressers", 2],
    ["Hand-over minutes", 4],
  ];
  expect(readPeople(rows)).toEqual({ ok: true, value: crew });
  expect(readPeople([["What", "How many"], ...rows])).toEqual({ ok: true, value: crew });
});

test.each([
  [[["Drivers", 2]], /^people: "Drivers" cannot be used; give "dressers", "chairs"/],
  [
    [
      ["dressers", 1],
      ["What", "How many"],
    ],
    /^people: "What" cannot be used/,
  ],
  [
    [
      ["dressers", 1],
      ["Dresser", 2],
    ],
    /^people: "Dresser" cannot be used; give each of them once/,
  ],
  [[["dressers"], ["chairs"]], /^people: "one column" cannot be used; give two columns, what and how many/],
  [[[2, "dressers"]], /^people: "2" cannot be used; give "dressers"/],
  [[["dressers", 1.5]], /^people, dressers: "1.5" cannot be used; give a whole number/],
  [[["chairs", -1]], /^people, chairs: "-1"/],
  [
    [
      ["meal after hours", 0.25],
      ["meal minutes", 30],
    ],
    /type 6, not 6:00/,
  ],
  [[["meal after hours", 6]], /^people, meal minutes is blank/],
  [[["meal minutes", 30]], /^people, meal after hours is blank/],
  [
    [
      ["meal after hours", 6],
      ["meal minutes", 0.5 / 24],
    ],
    /type 30, not 0:30/,
  ],
  [[["dressers", { error: "#REF!" }]], /#REF!/],
])("%j is refused in one sentence", (cells, sentence) => {
  expect(said(cells)).toMatch(sentence);
});

test("no meal is kept where both its figures are blank or 0", () => {
  const outcome = readPeople([
    ["meal after hours", 0],
    ["meal minutes", ""],
  ]);
  expect(outcome.ok && outcome.value.meal).toBeNull();
});
