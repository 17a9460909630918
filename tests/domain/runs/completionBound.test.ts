import fc from "fast-check";
import { completionBound } from "../../../src/domain/runs/completionBound";
import type { Run } from "../../../src/domain/runs/run";
import { arbitraryRun } from "./arbitraryRun";

/** The shortest way from a place over some stops, every order tried; doors do not matter. */
function shortestWay(run: Run, place: number, left: readonly number[]): number {
  if (left.length === 0) return run.returns && place !== 0 ? run.travelMs[place]![0]! : 0;
  const ways = left.map((stop) => {
    const rest = left.filter((other) => other !== stop);
    return run.travelMs[place]![stop]! + shortestWay(run, stop, rest);
  });
  return Math.min(...ways);
}

const bits = (set: number, most: number): readonly number[] =>
  Array.from({ length: most }, (_, index) => index + 1).filter((stop) => set & (1 << (stop - 1)));

test("never says more than the shortest way on, from any place over all stops that are not met", () => {
  fc.assert(
    fc.property(arbitraryRun(5), fc.nat(31), fc.nat(5), fc.integer({ min: 0, max: 200 }), (run, set, at, target) => {
      const { stopCount } = run;
      const bound = completionBound(run, {
        toMeet: stopCount,
        mayMiss: () => false,
        mustFollow: run.rank.map(() => 0),
        targetMs: target * 60_000,
      });
      const met = bits(set, stopCount);
      const place = met[at % Math.max(1, met.length)] ?? 0;
      const left = bits(~set, stopCount);
      const prices = left.reduce((sum, stop) => sum + bound.priceMs[stop]!, 0);
      // Half a millisecond is what the search leaves for rounding.
      const said = prices + bound.leastMs(place, left.length, set & (2 ** stopCount - 1));
      expect(said).toBeLessThan(shortestWay(run, place, left) + 0.5);
    }),
    { numRuns: 500 },
  );
});

test("never says more than the shortest way over any of the stops, as many as are to be met", () => {
  fc.assert(
    fc.property(arbitraryRun(5), fc.nat(31), fc.integer({ min: 0, max: 200 }), (run, missable, target) => {
      const { stopCount } = run;
      const mayMiss = (stop: number): boolean => (missable & (1 << (stop - 1))) !== 0;
      const must = bits(~missable, stopCount);
      for (let toMeet = must.length; toMeet <= stopCount; toMeet++) {
        const bound = completionBound(run, {
          toMeet,
          mayMiss,
          mustFollow: run.rank.map(() => 0),
          targetMs: target * 60_000,
        });
        const said = bound.priceMs.reduce((sum, price) => sum + price, bound.leastMs(0, toMeet, 0));
        for (let set = 0; set < 2 ** stopCount; set++) {
          const stops = bits(set, stopCount);
          if (stops.length !== toMeet || must.some((stop) => !stops.includes(stop))) continue;
          expect(said).toBeLessThan(shortestWay(run, 0, stops) + 0.5);
        }
      }
    }),
    { numRuns: 100 },
  );
});

test("without prices it would be far off: on a ring, prices bring it to the whole way round", () => {
  const count = 12;
  const apart = (from: number, to: number): number =>
    Math.min(Math.abs(from - to), count - Math.abs(from - to)) * 60_000;
  const places = Array.from({ length: count }, (_, place) => place);
  const run: Run = {
    stopCount: count - 1,
    travelMs: places.map((from) => places.map((to) => apart(from, to))),
    visitMs: places.map(() => 0),
    beginMs: places.map(() => [0, Infinity]),
    rank: places.map(() => 0),
    leaveMs: 0,
    backByMs: Infinity,
    returns: true,
  };
  const bound = completionBound(run, {
    toMeet: count - 1,
    mayMiss: () => false,
    mustFollow: places.map(() => 0),
    targetMs: count * 60_000,
  });
  const said = bound.priceMs.reduce((sum, price) => sum + price, bound.leastMs(0, count - 1, 0));
  expect(said / 60_000).toBeGreaterThan(count * 0.95);
  expect(said / 60_000).toBeLessThan(count + 1e-6);
});
