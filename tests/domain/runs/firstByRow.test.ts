import fc from "fast-check";
import { completionBound } from "../../../src/domain/runs/completionBound";
import { firstByRow } from "../../../src/domain/runs/firstByRow";
import { orderCost } from "../../../src/domain/runs/orderCost";
import { arbitraryRun } from "./arbitraryRun";

/** Every order of some stops, the first by row first. */
function everyOrderOf(stops: readonly number[]): readonly (readonly number[])[] {
  if (stops.length === 0) return [[]];
  return stops.flatMap((stop) => everyOrderOf(stops.filter((other) => other !== stop)).map((rest) => [stop, ...rest]));
}

const cases = arbitraryRun(5).chain((run) =>
  fc.record({
    run: fc.constant(run),
    wished: fc.shuffledSubarray(
      Array.from({ length: run.stopCount }, (_, index) => index + 1),
      { minLength: run.stopCount },
    ),
  }),
);

test("is the first of all orders by row that end and travel no worse than some order does", () => {
  let seen = 0;
  fc.assert(
    fc.property(cases, ({ run, wished }) => {
      const ends = orderCost(run, wished);
      if (ends.endMs === Infinity) return;
      seen++;
      const first = everyOrderOf([...wished].sort((a, b) => a - b)).find((order) => {
        const { endMs, travelMs } = orderCost(run, order);
        return endMs <= ends.endMs && travelMs <= ends.travelMs;
      });
      const bound = completionBound(run, {
        toMeet: run.stopCount,
        mayMiss: () => false,
        mustFollow: run.rank.map(() => 0),
        targetMs: ends.travelMs,
      });
      expect(firstByRow(run, ends, bound, 100_000)).toEqual(first);
    }),
    { numRuns: 300 },
  );
  expect(seen).toBeGreaterThan(50);
});

test("gives up after so many tries", () => {
  fc.assert(
    fc.property(cases, ({ run, wished }) => {
      const ends = orderCost(run, wished);
      fc.pre(run.stopCount > 2 && ends.endMs < Infinity);
      const bound = completionBound(run, {
        toMeet: run.stopCount,
        mayMiss: () => false,
        mustFollow: run.rank.map(() => 0),
        targetMs: ends.travelMs,
      });
      expect(firstByRow(run, ends, bound, 1)).toBeNull();
    }),
    { numRuns: 50 },
  );
});
