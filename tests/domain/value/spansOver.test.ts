import { spansOver } from "../../../src/domain/value/spansOver";
import type { ValueStep } from "../../../src/domain/value/valueStep";

function step(day: number, value: number): ValueStep {
  return { day, pieces: 1, value, unvalued: 0, piecesProblem: null, valueProblem: null };
}

test("a span begins with the day that is over and ends with the one before it is not; equal is not over", () => {
  const steps = [step(1, 5), step(3, 9), step(4, 12), step(6, 5), step(8, 7)];
  expect(spansOver(steps, () => 5)).toEqual([
    { from: 3, until: 5, highest: 12, overBy: 7, problem: null },
    { from: 8, until: null, highest: 7, overBy: 2, problem: null },
  ]);
});

test("each day is held against its own cover", () => {
  const steps = [step(1, 8), step(4, 8)];
  expect(spansOver(steps, (day) => (day < 4 ? 10 : 6))).toEqual([
    { from: 4, until: null, highest: 8, overBy: 2, problem: null },
  ]);
});

test("where figures are too large to add, the span has no figure, and it ends", () => {
  expect(spansOver([step(1, Infinity), step(3, NaN)], () => 5)).toEqual([
    { from: 1, until: null, highest: NaN, overBy: NaN, problem: null },
  ]);
  expect(spansOver([step(1, Infinity)], () => Infinity)).toMatchObject([{ from: 1 }]);
});
