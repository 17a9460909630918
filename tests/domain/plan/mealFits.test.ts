import { mealFits } from "../../../src/domain/plan/mealFits";
import { scheduleOf } from "./scheduleOf";

test.each([
  [
    "a meal that begins with an end and into which nothing reaches fits",
    [
      [0, 10],
      [20, 30],
    ],
    true,
  ],
  [
    "a meal during which somebody works does not",
    [
      [0, 10],
      [15, 30],
    ],
    false,
  ],
  [
    "a meal that something spans does not",
    [
      [0, 10],
      [5, 30],
    ],
    false,
  ],
  [
    "a meal that begins when nothing ends does not",
    [
      [0, 9],
      [20, 30],
    ],
    false,
  ],
  [
    "what has no length ends nothing",
    [
      [0, 9],
      [10, 10],
    ],
    false,
  ],
  [
    "what has no length disturbs nothing",
    [
      [0, 10],
      [15, 15],
    ],
    true,
  ],
] as [string, [number, number][], boolean][])("%s", (_, steps, fits) => {
  expect(mealFits(scheduleOf(steps, { fromSeconds: 10, untilSeconds: 20 }))).toBe(fits);
});
