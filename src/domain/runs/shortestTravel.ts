import type { Run } from "./run";

/**
 * The least time from place to place, by way of other stops and their visits where that is shorter, as it may be in a table of
 * minutes typed by hand. Nothing that is still to be met can be reached sooner.
 */
export function shortestTravel(run: Run): readonly (readonly number[])[] {
  const least = run.travelMs.map((row) => [...row]);
  for (let via = 1; via <= run.stopCount; via++)
    for (const row of least)
      for (let to = 0; to <= run.stopCount; to++) {
        const bent = row[via]! + run.visitMs[via]! + least[via]![to]!;
        if (bent < row[to]!) row[to] = bent;
      }
  return least;
}
