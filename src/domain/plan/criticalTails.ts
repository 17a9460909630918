import type { Project } from "./project";

/** By activity: the longest chain of lengths from its beginning to the end of the project, its own included; what no schedule can beat. */
export function criticalTails(project: Project): number[] {
  const tails = new Array<number>(project.activities.length).fill(-1);
  const after: number[][] = project.activities.map(() => []);
  project.activities.forEach(({ before }, index) => before.forEach((other) => after[other]!.push(index)));
  const open = project.activities.map((_, index) => index);
  // An activity is open again behind those it waits for, so a long chain exhausts no stack.
  while (open.length > 0) {
    const index = open.at(-1)!;
    const waitsFor = after[index]!.filter((next) => tails[next]! < 0);
    if (waitsFor.length > 0) open.push(...waitsFor);
    else {
      open.pop();
      tails[index] = project.activities[index]!.length + Math.max(0, ...after[index]!.map((next) => tails[next]!));
    }
  }
  return tails;
}
