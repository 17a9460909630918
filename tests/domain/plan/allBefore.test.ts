import { allBefore } from "../../../src/domain/plan/allBefore";

test("what comes before something comes before all that follows it", () => {
  expect(allBefore([[], [0], [1], [], [2, 3]]).map((things) => [...things].sort())).toEqual([
    [],
    [0],
    [0, 1],
    [],
    [0, 1, 2, 3],
  ]);
});
