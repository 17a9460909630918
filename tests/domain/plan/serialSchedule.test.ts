import fc from "fast-check";
import { serialSchedule } from "../../../src/domain/plan/serialSchedule";
import { faultsOf } from "./faultsOf";
import { smallProject } from "./smallProject";

const activity = (length: number, needs: number[], before: number[] = [], releasedAt = 0) => ({
  length,
  needs,
  before,
  releasedAt,
});

test("each activity takes the first gap that is long and wide enough, also one before an earlier one", () => {
  const activities = [activity(4, [2]), activity(3, [1]), activity(5, [2], [1]), activity(4, [1], [], 1)];
  expect(serialSchedule({ activities, capacities: [3] }, [0, 1, 2, 3])).toEqual([0, 0, 4, 3]);
});

test("what has no length needs nothing and waits for what comes before it", () => {
  expect(serialSchedule({ activities: [activity(4, [1]), activity(0, [1], [0])], capacities: [1] }, [0, 1])).toEqual([
    0, 4,
  ]);
});

test("no activity begins too soon or where there is not enough, and none could begin a moment sooner with the others where they are", () => {
  fc.assert(
    fc.property(smallProject, (project) => {
      const order = project.activities.map((_, index) => index);
      const starts = serialSchedule(project, order);
      expect(faultsOf(project, starts)).toEqual([]);
      // The last placed has all others as they are: every sooner start is a fault.
      const last = order.length - 1;
      for (let sooner = 0; sooner < starts[last]!; sooner++) {
        if (project.activities[last]!.length === 0) continue;
        expect(faultsOf(project, [...starts.slice(0, last), sooner])).not.toEqual([]);
      }
    }),
    { numRuns: 300 },
  );
});
