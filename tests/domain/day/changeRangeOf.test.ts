import { changeRangeOf } from "../../../src/domain/day/changeRangeOf";
import { isProblem } from "../../../src/domain/isProblem";
import { sayProblem } from "../../../src/domain/wording";

test.each([
  ["three figures that rise are a range", 10, 15, 30, { low: 10, likely: 15, high: 30 }],
  ["the likely one may be an end", 15, 15, 30, { low: 15, likely: 15, high: 30 }],
  ["a missing Low is the likely figure", null, 15, 30, { low: 15, likely: 15, high: 30 }],
  ["a missing High is the likely figure", 10, 15, null, { low: 10, likely: 15, high: 15 }],
  ["with neither the change is fixed", null, 15, null, null],
  ["with all the same it is fixed", 15, 15, 15, null],
] as const)("%s", (_, low, likely, high, range) => {
  expect(changeRangeOf(low, likely, high, "look 3")).toEqual(range);
});

test.each([
  [20, 15, 30],
  [10, 40, 30],
  [30, 20, 10],
])("%d, %d, %d do not rise, and the sentence names the look", (low, likely, high) => {
  const range = changeRangeOf(low, likely, high, "look 3");
  expect(isProblem(range) ? sayProblem(range) : "").toBe(
    `Low, Likely, High of look 3: "${low}, ${likely}, ${high}" cannot be used; give minutes that rise, or stay, from Low to Likely to High.`,
  );
});
