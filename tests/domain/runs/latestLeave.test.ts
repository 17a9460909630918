import fc from "fast-check";
import { doorLimits } from "../../../src/domain/runs/doorLimits";
import { latestLeave } from "../../../src/domain/runs/latestLeave";
import { orderCost } from "../../../src/domain/runs/orderCost";
import type { Run } from "../../../src/domain/runs/run";
import { visitEnd } from "../../../src/domain/runs/visitEnd";
import { arbitraryRun } from "./arbitraryRun";

/** Runs with some of their stops in some order, such as can be kept. */
const kept = arbitraryRun(7)
  .chain((run) => {
    const stops = Array.from({ length: run.stopCount }, (_, index) => index + 1);
    const order = fc.tuple(
      fc.shuffledSubarray(stops, { minLength: 0 }),
      fc.shuffledSubarray(stops, { minLength: stops.length }),
    );
    return fc.record({ run: fc.constant(run), orders: order });
  })
  .map(({ run, orders }) => ({ run, orders: orders.filter((order) => orderCost(run, order).endMs < Infinity) }));

/** After each stop of an order: the set met, the last of them, when it was reached and left, and how many are to come. */
function* statesOf(run: Run, order: readonly number[]) {
  let leaveMs = run.leaveMs;
  let last = 0;
  let met = 0;
  for (const [index, stop] of order.entries()) {
    yield {
      met,
      last,
      leaveMs,
      next: stop,
      arriveMs: leaveMs + run.travelMs[last]![stop]!,
      toCome: order.length - index,
    };
    leaveMs = visitEnd(run, stop, leaveMs + run.travelMs[last]![stop]!);
    met |= 1 << (stop - 1);
    last = stop;
  }
  yield { met, last, leaveMs, next: null, arriveMs: 0, toCome: 0 };
}

test("what an order that ends in time needs is never said to be too late, too soon or out of turn", () => {
  let seen = 0;
  fc.assert(
    fc.property(kept, ({ run, orders }) => {
      for (const order of orders) {
        seen++;
        const { endMs } = orderCost(run, order);
        const all = order.length === run.stopCount;
        for (const every of all ? [true, false] : [false]) {
          const limits = doorLimits(run, endMs, every);
          const [exactly, orMore] = [latestLeave(run, limits, false), latestLeave(run, limits, true)];
          for (const { met, last, leaveMs, next, arriveMs, toCome } of statesOf(run, order)) {
            expect(leaveMs).toBeLessThanOrEqual(exactly(last, toCome, met));
            for (let fewer = 0; fewer <= toCome; fewer++) expect(leaveMs).toBeLessThanOrEqual(orMore(last, fewer, met));
            if (next === null) continue;
            expect(arriveMs).toBeLessThanOrEqual(limits.arriveByMs[next]!);
            expect(arriveMs).toBeGreaterThanOrEqual(limits.arriveFromMs[next]!);
            expect(limits.mustFollow[next]! & ~met).toBe(0);
          }
        }
      }
    }),
    { numRuns: 400 },
  );
  expect(seen).toBeGreaterThan(100);
});

test("says when a single stop must be set out for: half an hour away, closing at noon, a visit of ten minutes", () => {
  const minutes = (count: number): number => count * 60_000;
  const run: Run = {
    stopCount: 1,
    travelMs: [
      [0, minutes(30)],
      [minutes(30), 0],
    ],
    visitMs: [0, minutes(10)],
    beginMs: [
      [0, Infinity],
      [minutes(600), minutes(710)],
    ],
    rank: [0, 0],
    leaveMs: minutes(540),
    backByMs: Infinity,
    returns: true,
  };
  const by = (endMs: number): number => latestLeave(run, doorLimits(run, endMs, true), false)(0, 1, 0);
  expect(by(Infinity)).toBe(minutes(680));
  expect(by(minutes(650))).toBe(minutes(580));
  expect(by(minutes(639))).toBe(-Infinity);
});
