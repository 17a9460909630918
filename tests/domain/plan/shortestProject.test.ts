import fc from "fast-check";
import { projectBound } from "../../../src/domain/plan/projectBound";
import { projectEnd } from "../../../src/domain/plan/projectEnd";
import { projectTask } from "../../../src/domain/plan/projectTask";
import { serialSchedule } from "../../../src/domain/plan/serialSchedule";
import { shortestProject } from "../../../src/domain/plan/shortestProject";
import { faultsOf } from "./faultsOf";
import { ordersKeeping } from "./ordersKeeping";
import { smallProject } from "./smallProject";

test("small projects end as soon as in the best of all orders, and the bound never passes that", () => {
  fc.assert(
    fc.property(smallProject, (given) => {
      const project = { ...given, activities: given.activities.slice(0, 5) };
      const ends = ordersKeeping(projectTask(project)).map((order) =>
        projectEnd(project, serialSchedule(project, order)),
      );
      const found = shortestProject(project, 2000);
      expect(faultsOf(project, found.starts)).toEqual([]);
      expect(found.end).toBe(Math.min(...ends));
      expect(found.bound).toBeLessThanOrEqual(found.end);
      expect(projectBound(project)).toBe(found.bound);
    }),
    { numRuns: 100 },
  );
});

test("a polished order keeps what comes before what and ends no later", () => {
  fc.assert(
    fc.property(smallProject, (project) => {
      const task = projectTask(project);
      const order = project.activities.map((_, index) => index);
      const polished = task.polish!(order);
      expect([...polished].sort()).toEqual(order);
      expect(faultsOf(project, serialSchedule(project, polished))).toEqual([]);
      expect(task.cost(polished)).toBeLessThanOrEqual(task.cost(order));
    }),
    { numRuns: 200 },
  );
});

test("the same project has the same schedule every time", () => {
  const activities = [5, 3, 4, 6, 2, 7].map((length, index) => ({
    length,
    releasedAt: index % 2,
    before: [],
    needs: [1 + (index % 2)],
  }));
  const project = { activities, capacities: [3] };
  expect(shortestProject(project, 500)).toEqual(shortestProject(project, 500));
});

test("a project without activities ends where it begins", () => {
  expect(shortestProject({ activities: [], capacities: [2] })).toEqual({ starts: [], end: 0, bound: 0 });
});
