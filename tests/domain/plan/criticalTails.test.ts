import { criticalTails } from "../../../src/domain/plan/criticalTails";

const activity = (length: number, before: number[]) => ({ length, before, releasedAt: 0, needs: [] });

test("the longest chain from an activity on, its own length included", () => {
  const activities = [activity(3, []), activity(2, [0]), activity(4, [0]), activity(1, [1, 2])];
  expect(criticalTails({ activities, capacities: [] })).toEqual([8, 3, 5, 1]);
});

test("a chain of thousands exhausts nothing", () => {
  const activities = Array.from({ length: 5000 }, (_, index) => activity(1, index === 0 ? [] : [index - 1]));
  expect(criticalTails({ activities, capacities: [] })[0]).toBe(5000);
});
