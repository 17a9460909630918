import { criticalTails } from "./criticalTails";
import { improvedOrder } from "./improvedOrder";
import { orderByRank } from "./orderByRank";
import type { Project } from "./project";
import { projectBound } from "./projectBound";
import { projectEnd } from "./projectEnd";
import { projectTask } from "./projectTask";
import { serialSchedule } from "./serialSchedule";

/** A schedule of a project, and what is known of it. */
export interface ShortProject {
  /** By activity. */
  readonly starts: readonly number[];
  readonly end: number;
  /** No schedule ends sooner; where it is the end itself, the schedule is proved shortest. */
  readonly bound: number;
}

/** Orders of its activities that are costed for one project, unless the bound is met before. */
const DEFAULT_TRIES = 50_000;

/**
 * The schedule found that ends soonest, from the longest remaining chain first, improved by shifting and polishing.
 *
 * The same project, tries and seed give the same schedule everywhere. Needs never above capacities, and no circle.
 */
export function shortestProject(project: Project, tries = DEFAULT_TRIES, seed = 1): ShortProject {
  const task = projectTask(project);
  const bound = projectBound(project);
  const longestTailFirst = orderByRank(
    task.before,
    criticalTails(project).map((tail) => -tail),
  );
  const { order } = improvedOrder(task, longestTailFirst, { tries, seed, target: bound });
  const starts = serialSchedule(project, order);
  return { starts, end: projectEnd(project, starts), bound };
}
