import { changeSecondsFor } from "../../../src/domain/plan/changeSecondsFor";
import type { WorkLook } from "../../../src/domain/plan/dayWork";

const look = (talents: number[], from: [number, number][] | null): WorkLook => ({
  talents,
  thereSeconds: 0,
  lastToArrive: -1,
  hairMakeupSeconds: 0,
  changeSeconds: 600,
  changeSecondsFrom: from === null ? null : new Map(from),
  shootingSeconds: 0,
  makeupFirst: true,
  set: -1,
  pieces: [],
  wearers: 0,
  after: [],
  shotAtSeconds: null,
});

test.each([
  ["without a table the look's own change counts", [0], null, [4], 600],
  ["a talent's first look takes its own change", [0], [[4, 60]], [-1], 600],
  ["a pair that is given counts", [0], [[4, 60]], [4], 60],
  ["a pair of 0 is no change", [0], [[4, 0]], [4], 0],
  ["a pair that is not given takes the look's own", [0], [[4, 60]], [3], 600],
  [
    "of several talents the longest counts",
    [0, 1],
    [
      [4, 60],
      [5, 90],
    ],
    [4, 5],
    90,
  ],
  ["and one among them on a first look counts the look's own", [0, 1], [[4, 60]], [4, -1], 600],
  ["where nobody is named the look's own counts", [], [[4, 60]], [], 600],
] as [string, number[], [number, number][] | null, number[], number][])(
  "%s",
  (_, talents, from, lastLookOf, seconds) => {
    expect(changeSecondsFor(look(talents, from), lastLookOf)).toBe(seconds);
  },
);
