import type { Project } from "./project";

/** When the last activity ends, from when each begins; 0 where there is none. */
export function projectEnd(project: Project, starts: readonly number[]): number {
  let end = 0;
  project.activities.forEach(({ length }, index) => (end = Math.max(end, starts[index]! + length)));
  return end;
}
