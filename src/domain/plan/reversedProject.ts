import type { Project } from "./project";

/** The same project run backwards: what came before comes after. Releases are left out, since they would become deadlines. */
export function reversedProject(project: Project): Project {
  const after: number[][] = project.activities.map(() => []);
  project.activities.forEach(({ before }, index) => before.forEach((other) => after[other]!.push(index)));
  const activities = project.activities.map((activity, index) => ({
    ...activity,
    releasedAt: 0,
    before: after[index]!,
  }));
  return { ...project, activities };
}
