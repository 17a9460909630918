import fc from "fast-check";
import type { Run } from "../../../src/domain/runs/run";

const MINUTE = 60_000;
const span = fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 0, max: 40 }));

/** Small runs, in whole minutes so that ties are many: tables that need not be those of any map, doors that open twice, deadlines that bind. */
export function arbitraryRun(mostStops: number): fc.Arbitrary<Run> {
  return fc.integer({ min: 0, max: mostStops }).chain((stopCount) => {
    const square = fc.array(
      fc.array(fc.integer({ min: 0, max: 15 }), { minLength: stopCount + 1, maxLength: stopCount + 1 }),
      { minLength: stopCount + 1, maxLength: stopCount + 1 },
    );
    const doors = fc.oneof(
      { weight: 2, arbitrary: fc.constant([0, Infinity]) },
      { weight: 3, arbitrary: span.map(([from, width]) => [from, from + width]) },
      {
        weight: 2,
        arbitrary: fc
          .tuple(span, span)
          .map(([[from, width], [gap, width2]]) => [
            from,
            from + width,
            from + width + gap + 1,
            from + width + gap + 1 + width2,
          ]),
      },
      { weight: 1, arbitrary: fc.constant<number[]>([]) },
    );
    const each = <T>(one: fc.Arbitrary<T>) => fc.array(one, { minLength: stopCount, maxLength: stopCount });
    return fc
      .record({
        square,
        visits: each(fc.integer({ min: 0, max: 10 })),
        doors: each(doors),
        ranks: each(fc.integer({ min: 0, max: 2 })),
        leave: fc.integer({ min: 0, max: 20 }),
        backBy: fc.option(fc.integer({ min: 20, max: 120 })),
        returns: fc.boolean(),
      })
      .map(({ square: minutes, visits, doors: begins, ranks, leave, backBy, returns }) => ({
        stopCount,
        travelMs: minutes.map((row) => row.map((value) => value * MINUTE)),
        visitMs: [0, ...visits.map((value) => value * MINUTE)],
        beginMs: [[0, Infinity], ...begins.map((times) => times.map((time) => time * MINUTE))],
        rank: [0, ...ranks],
        leaveMs: leave * MINUTE,
        backByMs: backBy === null ? Infinity : backBy * MINUTE,
        returns,
      }));
  });
}
