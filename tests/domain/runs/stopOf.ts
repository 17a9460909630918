import type { Stop } from "../../../src/domain/runs/stop";

/** A stop of a test, open at any time unless it says otherwise; hours are given as hours. */
export function stopOf(
  name: string,
  { hours, ...given }: Partial<Stop> & { hours?: readonly (readonly [number, number])[] } = {},
): Stop {
  const opening = hours?.map(([from, until]) => ({ from: from / 24, until: until / 24 })) ?? null;
  return { name, said: name, minutes: 0, opening, due: null, place: null, problem: null, ...given };
}
