import fc from "fast-check";
import { completionBound } from "../../../src/domain/runs/completionBound";
import type { Run } from "../../../src/domain/runs/run";
import { arbitraryRun } from "./arbitraryRun";

/** Travel and visits of the shortest way from a place over some stops, every order tried; doors do not matter. */
function shortestWay(run: Run, place: number, left: readonly number[]): number {
  if (left.length === 0) return run.returns ? run.travelMs[place]![0]! : 0;
  const ways = left.map((stop) => {
    const rest = left.filter((other) => other !== stop);
    return run.travelMs[place]![stop]! + run.visitMs[stop]! + shortestWay(run, stop, rest);
  });
  return Math.min(...ways);
}

test("never says more than the shortest way on, from any place over any stops", () => {
  fc.assert(
    fc.property(arbitraryRun(5), fc.nat(31), fc.nat(5), fc.integer({ min: 0, max: 200 }), (run, set, at, target) => {
      const bound = completionBound(run, target * 60_000);
      const place = at % (run.stopCount + 1);
      const left = Array.from({ length: run.stopCount }, (_, index) => index + 1).filter(
        (stop) => stop !== place && set & (1 << (stop - 1)),
      );
      const prices = left.reduce((sum, stop) => sum + bound.priceMs[stop]!, 0);
      // Half a millisecond is what the search leaves for rounding.
      expect(prices + bound.leastMs(place, left.length)).toBeLessThan(shortestWay(run, place, left) + 0.5);
    }),
    { numRuns: 500 },
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
  const bound = completionBound(run, count * 60_000);
  const said = bound.priceMs.reduce((sum, price) => sum + price, bound.leastMs(0, count - 1));
  expect(said / 60_000).toBeGreaterThan(count * 0.95);
  expect(said / 60_000).toBeLessThan(count + 1e-6);
});
