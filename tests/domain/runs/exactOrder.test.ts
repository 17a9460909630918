import fc from "fast-check";
import { exactOrder } from "../../../src/domain/runs/exactOrder";
import { improvedOrder } from "../../../src/domain/runs/improvedOrder";
import { orderCost } from "../../../src/domain/runs/orderCost";
import type { Run } from "../../../src/domain/runs/run";
import { runEnd } from "../../../src/domain/runs/runEnd";
import { visitEnd } from "../../../src/domain/runs/visitEnd";
import { seededRandom } from "../../../src/domain/seededRandom";
import { arbitraryRun } from "./arbitraryRun";

const HOUR = 3_600_000;
const MINUTE = 60_000;

/** The most stops of equal rank and the soonest end, by every set of stops and its last one, with nothing left out. */
function plainly(run: Run): { count: number; endMs: number } {
  const { stopCount } = run;
  const ends = Array.from({ length: 2 ** stopCount }, () => Array<number>(stopCount + 1).fill(Infinity));
  ends[0]![0] = run.leaveMs;
  let best = { count: 0, endMs: runEnd(run, 0, run.leaveMs) };
  for (const [set, row] of ends.entries()) {
    const count = set.toString(2).replaceAll("0", "").length;
    for (const [last, leaveMs] of row.entries()) {
      const endMs = runEnd(run, last, leaveMs);
      if (endMs < Infinity && (count > best.count || (count === best.count && endMs < best.endMs)))
        best = { count, endMs };
      for (let stop = 1; stop <= stopCount; stop++) {
        if (leaveMs === Infinity || set & (1 << (stop - 1))) continue;
        const over = visitEnd(run, stop, leaveMs + run.travelMs[last]![stop]!);
        const onward = ends[set | (1 << (stop - 1))]!;
        onward[stop] = Math.min(onward[stop]!, over);
      }
    }
  }
  return best;
}

/** Twenty stops strewn over a town, a quarter of an hour or less at each, with hours such as doors have; in whole minutes. */
function aDay(hours: readonly (readonly number[])[], seed: number): Run {
  const random = seededRandom(seed);
  const places = Array.from({ length: 21 }, () => [random() * 25, random() * 25] as const);
  const visitMs = places.map((_, place) => (place === 0 ? 0 : (1 + Math.floor(random() * 3)) * 5 * MINUTE));
  return {
    stopCount: 20,
    travelMs: places.map(([x, y]) => places.map(([u, v]) => Math.ceil(Math.hypot(x - u, y - v)) * MINUTE)),
    visitMs,
    beginMs: places.map((_, place) => {
      if (place === 0) return [0, Infinity];
      const open = hours[Math.floor(random() * hours.length)]!;
      return open.map((hour, at) => hour * HOUR - (at % 2 === 0 ? 0 : visitMs[place]!));
    }),
    rank: places.map(() => 0),
    leaveMs: 9 * HOUR,
    backByMs: Infinity,
    returns: true,
  };
}

describe("exactOrder", () => {
  it("meets as many and ends as soon as when every set of ten stops is tried", () => {
    fc.assert(
      fc.property(arbitraryRun(10), (some) => {
        const run: Run = { ...some, rank: some.rank.map(() => 0) };
        if (run.returns && run.leaveMs > run.backByMs) return;
        const found = improvedOrder(run, 50);
        const { order, endMs, travelMs, isProved } = exactOrder(run, found)!;
        expect(isProved).toBe(true);
        expect({ count: order.length, endMs }).toEqual(plainly(run));
        expect({ endMs, travelMs }).toEqual(orderCost(run, order));
      }),
      { numRuns: 60 },
    );
  });

  const doors = {
    "shops and showrooms, some with a lunch hour": [
      [9.5, 18],
      [10, 17],
      [10, 13, 14, 18],
      [11, 19],
    ],
    "slots of two hours": [
      [9, 11],
      [10, 12],
      [12, 14],
      [14, 16],
      [15, 17],
      [9, 18],
    ],
    "many that close early, so that not all can be met": [
      [9, 11],
      [10, 12],
      [10, 13],
      [9, 14],
      [10, 16],
    ],
  };

  it.each(Object.entries(doors))("proves twenty stops where opening times bind: %s", (_, hours) => {
    for (const seed of [1, 2]) {
      const run = aDay(hours, seed);
      const found = improvedOrder(run, 200_000);
      const best = exactOrder(run, found);
      expect(best?.isProved).toBe(true);
      expect(best).toMatchObject(orderCost(run, best!.order));
      const better =
        best!.order.length - found.order.length || found.endMs - best!.endMs || found.travelMs - best!.travelMs;
      expect(better).toBeGreaterThanOrEqual(0);
    }
  });
});
