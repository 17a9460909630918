import { orderByRank } from "../../../src/domain/plan/orderByRank";

test("the least rank comes first, the lowest number where tied, but nothing before what must come before it", () => {
  expect(orderByRank([[], [], []], [2, 1, 1])).toEqual([1, 2, 0]);
  expect(orderByRank([[], [0], []], [5, 1, 3])).toEqual([2, 0, 1]);
});
