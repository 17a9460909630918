import type { Look } from "../../src/domain/day/look";
import type { Problem } from "../../src/domain/problem";
import { sayProblem } from "../../src/domain/wording";
import { readLooks } from "../../src/sheet/readLooks";
import type { Table } from "../../src/sheet/table";

const FIELDS = {
  Look: "look",
  Order: "order",
  Talent: "talent",
  Set: "set",
  Change: "change",
  Likely: "likely",
  "Hair and make-up": "hairMakeup",
  Shooting: "shooting",
  Arrives: "arrives",
  After: "after",
  Fixed: "fixed",
  Date: "date",
  "Shot at": "shotAt",
  "Make-up first": "makeupFirst",
  Where: "where",
  Pieces: "pieces",
};
const WITH_RANGE = { ...FIELDS, Low: "low", High: "high" };

function table(headings: readonly (keyof typeof WITH_RANGE)[], rows: readonly unknown[][]): Table {
  return {
    kind: "looks",
    cells: [headings, ...rows],
    headingRow: 0,
    headings,
    columnOf: Object.fromEntries(headings.map((heading, column) => [WITH_RANGE[heading], column])),
    dataRows: rows.map((_, index) => index + 1),
  };
}

function looksOf(it: Table): readonly object[] | string {
  const outcome = readLooks(it);
  return outcome.ok ? outcome.value : sayProblem(outcome.problem);
}

test("a full row is read whole", () => {
  const headings = Object.keys(FIELDS) as (keyof typeof FIELDS)[];
  const row = [
    "Look 3",
    2,
    "Mina & Teo",
    "Roof",
    15,
    20,
    30,
    "1h",
    "09:30",
    "1; look 02",
    "last",
    "2026-03-05",
    0.5,
    "no",
    "Ext.",
    "101, silk scarf; p 7",
  ];
  expect(looksOf(table(headings, [row]))).toEqual([
    {
      key: "3",
      label: "Look 3",
      talents: ["Mina", "Teo"],
      talentText: "Mina & Teo",
      order: 2,
      date: 46086,
      set: "roof",
      changeMinutes: 15,
      changeRange: null,
      where: "outdoors",
      pieces: ["101", "p 7"],
      hairMakeupMinutes: 30,
      shootingMinutes: 60,
      makeupFirst: false,
      arrivesAt: 9.5 / 24,
      shotAt: 0.5,
      after: ["1", "2"],
      fixed: "last",
    },
  ]);
});

test.each([[null], [""], [undefined], ["  "]])("blanks sent as %j and as 0 read the same", (blank) => {
  const headings = Object.keys(FIELDS) as (keyof typeof FIELDS)[];
  const rest = (value: unknown): unknown[] => [4, ...headings.slice(1).map(() => value)];
  expect(looksOf(table(headings, [rest(blank)]))).toEqual(looksOf(table(headings, [rest(0)])));
  expect(looksOf(table(headings, [rest(blank)]))).toMatchObject([
    { order: null, arrivesAt: null, makeupFirst: true, after: [] },
  ]);
});

test("a blank change falls back on Likely", () => {
  expect(
    looksOf(
      table(
        ["Look", "Change", "Likely"],
        [
          [1, "", 12],
          [2, 8, 12],
        ],
      ),
    ),
  ).toMatchObject([{ changeMinutes: 12 }, { changeMinutes: 8 }]);
});

test("two spellings of one talent are one talent", () => {
  expect(
    looksOf(
      table(
        ["Look", "Talent"],
        [
          [1, "Zoë Marsh"],
          [2, "ZOE MARSH, Ana"],
        ],
      ),
    ),
  ).toMatchObject([{ talents: ["Zoë Marsh"] }, { talents: ["Zoë Marsh", "Ana"], talentText: "ZOE MARSH, Ana" }]);
});

test("a row without a look, a talent and a duration is passed over", () => {
  expect(
    looksOf(
      table(
        ["Look", "Talent", "Set"],
        [
          [1, "Ana", ""],
          ["", "", "Roof"],
        ],
      ),
    ),
  ).toHaveLength(1);
});

test.each([
  [["Look", "Shooting"], [3, 0.25], /^Shooting of look 3: "6:00" cannot be used; give minutes/],
  [["Look", "Change"], [3, "0:15"], /^Change of look 3: .* type 15, not 0:15/],
  [["Look", "Arrives"], [3, "early"], /^Arrives of look 3: "early"/],
  [["Look", "Order"], [3, "second"], /^Order of look 3: "second"/],
  [["Look", "Date"], [3, "03/04/26"], /^Date of look 3: "03\/04\/26" could be/],
  [["Look", "Make-up first"], [3, "maybe"], /^Make-up first of look 3: "maybe" cannot be used; give yes or no/],
  [["Look", "Fixed"], [3, "soon"], /^Fixed of look 3/],
  [["Look", "Talent"], ["", "Ana"], /^Look of row 2 is blank; give the look's number/],
  [["Look", "Talent"], [3, { error: "#REF!" }], /^Talent of look 3 holds the error #REF!/],
] as [(keyof typeof FIELDS)[], unknown[], RegExp][])(
  "%j of %j is refused in one sentence",
  (headings, row, sentence) => {
    expect(looksOf(table(headings, [row]))).toMatch(sentence);
  },
);

test.each([
  ["three figures are the range of the change", [15, 10, 12, 30], { low: 10, likely: 12, high: 30 }],
  ["where Likely is blank Change stands for it", [15, 10, null, 30], { low: 10, likely: 15, high: 30 }],
  [
    "a Low that is blank, or 0 as some hosts send blanks, is the likely figure",
    [15, 0, null, 30],
    { low: 15, likely: 15, high: 30 },
  ],
  ["with neither Low nor High the change is fixed", [15, null, 12, ""], null],
] as const)("%s", (_, [change, low, likely, high], range) => {
  const it = table(["Look", "Change", "Low", "Likely", "High"], [[1, change, low, likely, high]]);
  expect(looksOf(it)).toMatchObject([{ changeMinutes: 15, changeRange: range }]);
});

test("a Low or a High that cannot be read, or figures that do not rise, wait until somebody asks for the range", () => {
  const it = table(
    ["Look", "Change", "Low", "High"],
    [
      [1, 15, "soon", 30],
      [2, 15, 20, 30],
      [3, 15, 5, "long"],
    ],
  );
  const looks = looksOf(it) as readonly { changeRange: Problem }[];
  expect(looks.map(({ changeRange }) => sayProblem(changeRange))).toEqual([
    'Low of look 1: "soon" cannot be used; give minutes as a number of 0 or more, such as 15.',
    'Low, Likely, High of look 2: "20, 15, 30" cannot be used; give minutes that rise, or stay, from Low to Likely to High.',
    'High of look 3: "long" cannot be used; give minutes as a number of 0 or more, such as 15.',
  ]);
});

test("one piece number in two spellings is one piece, and a description is none", () => {
  const it = table(
    ["Look", "Pieces"],
    [
      [1, "P-7; 101"],
      [2, "p7 & scarf"],
      [3, 101],
    ],
  );
  expect((looksOf(it) as Look[]).map(({ pieces }) => pieces)).toEqual([["P-7", "101"], ["P-7"], ["101"]]);
});

test("bare numbers, one a cell all down the column, say how many pieces a look has", () => {
  const it = table(
    ["Look", "Pieces"],
    [
      [1, 5],
      [2, "5"],
      [3, "P5"],
    ],
  );
  expect((looksOf(it) as Look[]).map(({ pieces }) => pieces)).toEqual([[], [], ["P5"]]);
});
