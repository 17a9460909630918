import { criticalTails } from "./criticalTails";
import type { Project } from "./project";

/** No schedule of the project ends sooner: its longest chain from each release on, and the load of each resource. */
export function projectBound(project: Project): number {
  const tails = criticalTails(project);
  let bound = 0;
  project.activities.forEach(({ releasedAt }, index) => (bound = Math.max(bound, releasedAt + tails[index]!)));
  project.capacities.forEach((capacity, resource) => {
    let load = 0;
    for (const { length, needs } of project.activities) load += length * needs[resource]!;
    if (load > 0) bound = Math.max(bound, Math.ceil(load / capacity));
  });
  return bound;
}
