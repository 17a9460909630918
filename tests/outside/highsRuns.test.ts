import fc from "fast-check";
import loadHighs from "highs";
import { bestOrder } from "../../src/domain/runs/bestOrder";
import type { Run } from "../../src/domain/runs/run";

// A second solver on small runs: HiGHS (MIT), given the usual big-M model of a route with time windows where every stop must be met.
// What it proves least must be what the dynamic program proves least, and what it finds impossible must leave a stop out.

const MINUTE = 60_000;
const BIG = 1000;

const cases = fc.integer({ min: 2, max: 6 }).chain((stopCount) =>
  fc.record({
    points: fc.array(fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 })), {
      minLength: stopCount + 1,
      maxLength: stopCount + 1,
    }),
    windows: fc.array(fc.tuple(fc.integer({ min: 0, max: 80 }), fc.integer({ min: 5, max: 60 })), {
      minLength: stopCount,
      maxLength: stopCount,
    }),
    visit: fc.integer({ min: 0, max: 9 }),
  }),
);
type Case = typeof cases extends fc.Arbitrary<infer T> ? T : never;

function runOfCase({ points, windows, visit }: Case): Run {
  const minutes = points.map(([x, y]) => points.map(([u, v]) => Math.abs(x - u) + Math.abs(y - v)));
  return {
    stopCount: windows.length,
    travelMs: minutes.map((row) => row.map((value) => value * MINUTE)),
    visitMs: [0, ...windows.map(() => visit * MINUTE)],
    beginMs: [[0, Infinity], ...windows.map(([from, width]) => [from * MINUTE, (from + width) * MINUTE])],
    rank: points.map(() => 0),
    leaveMs: 0,
    backByMs: Infinity,
    returns: true,
  };
}

/** The model in the LP format: x says which leg is driven, b when a visit begins, e when one is back. */
function modelOf({ stopCount, travelMs, visitMs, beginMs }: Run): string {
  const places = Array.from({ length: stopCount + 1 }, (_, place) => place);
  const stops = places.slice(1);
  const legs = places.flatMap((from) => places.filter((to) => to !== from).map((to) => [from, to] as const));
  const sum = (some: readonly (readonly [number, number])[]): string => some.map(([i, j]) => `x${i}_${j}`).join(" + ");
  const lines = places.flatMap((place) => [
    ` ${sum(legs.filter(([from]) => from === place))} = 1`,
    ` ${sum(legs.filter(([, to]) => to === place))} = 1`,
  ]);
  for (const [from, to] of legs) {
    const takes = (travelMs[from]![to]! + visitMs[from]!) / MINUTE;
    // Who drives the leg begins at its end no sooner than it takes.
    if (from === 0) lines.push(` b${to} - ${takes} x0_${to} >= 0`);
    else lines.push(` ${to === 0 ? "e" : `b${to}`} - b${from} - ${BIG + takes} x${from}_${to} >= ${-BIG}`);
  }
  const bounds = stops.map((stop) => ` ${beginMs[stop]![0]! / MINUTE} <= b${stop} <= ${beginMs[stop]![1]! / MINUTE}`);
  return [
    "Minimize",
    " obj: e",
    "Subject To",
    ...lines,
    "Bounds",
    ...bounds,
    "Binary",
    ` ${legs.map(([from, to]) => `x${from}_${to}`).join(" ")}`,
    "End",
  ].join("\n");
}

test("a mixed-integer solver proves the same least end, or that not all can be met", async () => {
  const highs = await loadHighs();
  const seen = { met: 0, notMet: 0 };
  fc.assert(
    fc.property(cases, (some) => {
      const run = runOfCase(some);
      const best = bestOrder(run);
      const solved = highs.solve(modelOf(run));
      expect(best.isProved).toBe(true);
      if (solved.Status === "Infeasible") {
        expect(best.order.length).toBeLessThan(run.stopCount);
        seen.notMet++;
        return;
      }
      expect(solved.Status).toBe("Optimal");
      expect(best.order.length).toBe(run.stopCount);
      expect(best.endMs / MINUTE).toBeCloseTo(solved.ObjectiveValue, 4);
      seen.met++;
    }),
    { numRuns: 40 },
  );
  expect(Math.min(seen.met, seen.notMet)).toBeGreaterThan(3);
});
