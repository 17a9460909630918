import { orderByRank } from "./orderByRank";
import type { OrderTask } from "./orderTask";
import type { Project } from "./project";
import { projectEnd } from "./projectEnd";
import { reversedProject } from "./reversedProject";
import { serialSchedule } from "./serialSchedule";

/**
 * A project as orders to be tried: an order costs the end of the project when its activities are placed in it.
 *
 * It is polished by forward-backward improvement (Li and Willis 1992): all is pushed as late as the end allows, then
 * as soon as the beginning allows, for as long as the end comes sooner.
 */
export function projectTask(project: Project): OrderTask {
  const before = project.activities.map((activity) => activity.before);
  const reversed = reversedProject(project);
  const reversedBefore = reversed.activities.map((activity) => activity.before);

  function polish(order: readonly number[]): readonly number[] {
    let polished = order;
    let starts = serialSchedule(project, order);
    let end = projectEnd(project, starts);
    for (;;) {
      const lastFirst = starts.map((start, index) => -start - project.activities[index]!.length);
      const late = serialSchedule(reversed, orderByRank(reversedBefore, lastFirst));
      const soonestFirst = late.map((start, index) => -start - project.activities[index]!.length);
      const again = orderByRank(before, soonestFirst);
      starts = serialSchedule(project, again);
      const againEnd = projectEnd(project, starts);
      if (againEnd <= end) polished = again;
      if (againEnd >= end) return polished;
      end = againEnd;
    }
  }

  return {
    count: before.length,
    before,
    placeOf: before.map(() => -1),
    cost: (order) => projectEnd(project, serialSchedule(project, order)),
    polish,
  };
}
