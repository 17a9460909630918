import { sayProblem } from "../../src/domain/wording";
import { readChanges } from "../../src/sheet/readChanges";

const plain = (cells: unknown[][] | null): unknown => {
  const outcome = readChanges(cells);
  return outcome.ok
    ? Object.fromEntries([...outcome.value].map(([from, to]) => [from, Object.fromEntries(to)]))
    : sayProblem(outcome.problem);
};

test("the row's look is taken off and the column's put on", () => {
  expect(
    plain([
      ["", 1, 2],
      [1, 0, 10],
      [2, 15, 0],
    ]),
  ).toEqual({ 1: { 2: 10 }, 2: { 1: 15 } });
});

test("headings may stand in any order and spelling, the corner may hold anything, and a blank pair is left out", () => {
  expect(
    plain([
      ["from / to", "Look 2", "1"],
      ["look 01", "10 min", ""],
      [2, null, 15],
    ]),
  ).toEqual({ 1: { 2: 10 }, 2: { 1: 15 } });
});

test("left out, there are none", () => {
  expect(plain(null)).toEqual({});
});

test.each([
  [
    [
      ["", 1, 2],
      [1, 0, 10],
    ],
    /^changes: "2" cannot be used; give a table of minutes/,
  ],
  [
    [
      ["", 1, 1],
      [1, 0, 10],
      [2, 5, 0],
    ],
    /^changes: "1"/,
  ],
  [
    [
      ["", 1, 2],
      [1, 0, 0.25],
      [2, 5, 0],
    ],
    /^changes from 1 to 2: "6:00" cannot be used/,
  ],
  [
    [
      ["", 1, 2],
      [1, 0, "soon"],
      [2, 5, 0],
    ],
    /^changes from 1 to 2: "soon"/,
  ],
  [
    [
      ["", 1],
      [1, { error: "#N/A" }],
    ],
    /#N\/A/,
  ],
  [[[5]], /^changes: "" cannot be used/],
])("%j is refused in one sentence", (cells, sentence) => {
  expect(plain(cells)).toMatch(sentence);
});
