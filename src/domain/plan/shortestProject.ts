import { atOnce } from "./atOnce";
import { criticalTails } from "./criticalTails";
import { shiftedOrder } from "./shiftedOrder";
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
/** Several short searches from the same beginning come further than one long one. */
const ROUNDS = 10;

/**
 * The schedule found that ends soonest, from the longest remaining chain first, improved by shifting and polishing
 * in several rounds.
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
  let best = atOnce(shiftedOrder(task, longestTailFirst, { tries: 1, seed, target: bound }));
  for (let round = 0; round < ROUNDS && best.cost > bound; round++) {
    const effort = { tries: Math.ceil(tries / ROUNDS), seed: seed + round, target: bound };
    const found = atOnce(shiftedOrder(task, longestTailFirst, effort));
    if (found.cost < best.cost) best = found;
  }
  const starts = serialSchedule(project, best.order);
  return { starts, end: projectEnd(project, starts), bound };
}
