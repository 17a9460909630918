import fc from "fast-check";
import { bestOrder } from "../../../src/domain/runs/bestOrder";
import { improvedOrder } from "../../../src/domain/runs/improvedOrder";
import { orderCost } from "../../../src/domain/runs/orderCost";
import type { Run } from "../../../src/domain/runs/run";
import { stopWorths } from "../../../src/domain/runs/stopWorths";
import { arbitraryRun } from "./arbitraryRun";
import { everyOrder } from "./everyOrder";

describe("bestOrder", () => {
  it("is the best of all orders of all sets of stops: most met, soonest end, least travel, first rows", () => {
    fc.assert(
      fc.property(arbitraryRun(5), (run) => {
        const best = everyOrder(run);
        if (best === null) return;
        const { order, endMs, travelMs } = best;
        expect(bestOrder(run)).toEqual({ order, endMs, travelMs, isProved: true });
      }),
      { numRuns: 400 },
    );
  });
});

describe("bestOrder of more stops than can be tried one by one", () => {
  it("is never beaten by a search that goes on longer", () => {
    fc.assert(
      fc.property(arbitraryRun(13), (run) => {
        if (run.returns && run.leaveMs > run.backByMs) return;
        const best = bestOrder(run);
        const other = improvedOrder(run, 200_000);
        const worths = stopWorths(run.rank.slice(1));
        const worth = (order: readonly number[]): number => order.reduce((sum, stop) => sum + worths[stop - 1]!, 0);
        expect(best.isProved).toBe(true);
        expect(best).toMatchObject(orderCost(run, best.order));
        const gain =
          worth(best.order) - worth(other.order) || other.endMs - best.endMs || other.travelMs - best.travelMs;
        expect(gain).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 40 },
    );
  });

  it("keeps the rows where every order is as good, and says so, also with more ties than sets can be kept", () => {
    for (const stopCount of [6, 20, 30]) {
      const places = Array.from({ length: stopCount + 1 }, (_, place) => place);
      const run: Run = {
        stopCount,
        travelMs: places.map(() => places.map(() => 600_000)),
        visitMs: places.map(() => 0),
        beginMs: places.map(() => [0, Infinity]),
        rank: places.map(() => 0),
        leaveMs: 0,
        backByMs: Infinity,
        returns: true,
      };
      const best = bestOrder(run);
      expect(best.order).toEqual(places.slice(1));
      expect(best.isProved).toBe(stopCount <= 20);
    }
  });
});

describe("bestOrder where every way takes as long", () => {
  it("is settled for twenty stops of which some have a lunch hour and one opens late", () => {
    const places = Array.from({ length: 21 }, (_, place) => place);
    const hour = 3_600_000;
    for (const leg of [0, 600_000]) {
      const run: Run = {
        stopCount: 20,
        travelMs: places.map((from) => places.map((to) => (from === to ? 0 : leg))),
        visitMs: places.map((place) => (place % 4) * 300_000),
        beginMs: places.map((place) =>
          place === 7
            ? [16 * hour, 18 * hour]
            : place % 3 === 1
              ? [10 * hour, 12.5 * hour, 14 * hour, 18 * hour]
              : [0, Infinity],
        ),
        rank: places.map(() => 0),
        leaveMs: 9 * hour,
        backByMs: Infinity,
        returns: true,
      };
      const best = bestOrder(run);
      expect(best.isProved).toBe(true);
      expect(best).toMatchObject(orderCost(run, best.order));
      // Visits of no time may come after it where no way takes any.
      if (leg > 0) expect(best.order.at(-1)).toBe(7);
      expect(best.endMs).toBe(16 * hour + run.visitMs[7]! + leg);
    }
  });
});

describe("improvedOrder", () => {
  it("gives an order that can be kept, with what it comes to, and the same each time", () => {
    fc.assert(
      fc.property(arbitraryRun(8), (run) => {
        if (run.returns && run.leaveMs > run.backByMs) return;
        const found = improvedOrder(run, 3000);
        expect({ order: found.order, ...orderCost(run, found.order), isProved: false }).toEqual(found);
        expect(found.endMs).toBeLessThan(Infinity);
        expect(new Set(found.order).size).toBe(found.order.length);
        expect(improvedOrder(run, 3000)).toEqual(found);
      }),
      { numRuns: 100 },
    );
  });
});
