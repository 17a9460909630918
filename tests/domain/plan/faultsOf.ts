import type { Project } from "../../../src/domain/plan/project";

/** What is wrong with a schedule, moment by moment: shares nothing with the code that makes schedules. */
export function faultsOf({ activities, capacities }: Project, starts: readonly number[]): string[] {
  const faults: string[] = [];
  const ends = activities.map(({ length }, index) => starts[index]! + length);
  activities.forEach(({ releasedAt, before }, index) => {
    if (starts[index]! < releasedAt) faults.push(`${index} begins before its release`);
    for (const other of before) if (starts[index]! < ends[other]!) faults.push(`${index} begins before ${other} ends`);
  });
  for (const moment of new Set(starts)) {
    capacities.forEach((capacity, resource) => {
      const used = activities
        .filter((_, index) => starts[index]! <= moment && moment < ends[index]!)
        .reduce((sum, { needs }) => sum + needs[resource]!, 0);
      if (used > capacity) faults.push(`at ${moment} ${used} of ${capacity} of resource ${resource} are in use`);
    });
  }
  return faults;
}
