import { mealStartsInOrder } from "../../../src/domain/plan/mealStartsInOrder";
import { scheduleOf } from "./scheduleOf";

test("the latest end in time is tried first, then back to the first, then the ends that are late", () => {
  const day = scheduleOf([
    [0, 10],
    [5, 20],
    [10, 20],
    [20, 40],
    [40, 60],
    [7, 7],
  ]);
  expect(mealStartsInOrder(day, 40)).toEqual([40, 20, 10, 60]);
  expect(mealStartsInOrder(day, 5)).toEqual([10, 20, 40, 60]);
});
