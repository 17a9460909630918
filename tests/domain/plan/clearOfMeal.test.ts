import { clearOfMeal } from "../../../src/domain/plan/clearOfMeal";

const meal = { fromSeconds: 100, untilSeconds: 130 };

test.each([
  ["work that ends as the meal begins stays", 90, 10, 90],
  ["work that would reach into it begins after it", 90, 11, 130],
  ["work that would span it begins after it", 90, 100, 130],
  ["work that would begin with it begins after it", 100, 1, 130],
  ["work that would begin in it begins after it", 115, 1, 130],
  ["work that begins as it ends stays", 130, 10, 130],
  ["what has no length may stand at its beginning", 100, 0, 100],
  ["what has no length does not stand in it", 101, 0, 130],
])("%s", (_, from, length, begins) => {
  expect(clearOfMeal(from, length, meal)).toBe(begins);
  expect(clearOfMeal(from, length, null)).toBe(from);
});
