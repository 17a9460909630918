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

describe("bestOrder where very many ways take as long", () => {
  it("is settled for twenty shops with their hours, each way of ten or of twenty minutes", () => {
    const hour = 3_600_000;
    // Ways between the places, in tens of minutes, each row up to the place itself.
    const ways = (
      "1 22 121 1111 11112 221211 2122212 11221222 221221112 1111121121 21111122211 212111111121 1221121121121 " +
      "11122221211222 212121222211221 2212121122111111 11221222221112121 211221112111212221 2221121211211112211 " +
      "22221221121222112112"
    ).split(" ");
    const minutes = [10, 15, 5, 15, 5, 5, 15, 10, 15, 15, 20, 5, 20, 15, 5, 5, 5, 20, 20, 15];
    const open = (
      "9.5-13-14-18 11-13-14-18 11-17 10-18 9.5-18 10-17.5 11-17.5 10-18 11-17.5 10-13-14-16 10-16 " +
      "10.5-13-14-16 11-19 10-16 9-18 11-17 11-18 10-17 10-18 10.5-16"
    ).split(" ");
    const visitMs = [0, ...minutes.map((each) => each * 60_000)];
    const tens = (a: number, b: number): number => (a === b ? 0 : Number(ways[Math.max(a, b) - 1]![Math.min(a, b)]));
    const places = visitMs.map((_, place) => place);
    const run: Run = {
      stopCount: 20,
      travelMs: places.map((from) => places.map((to) => tens(from, to) * 600_000)),
      visitMs,
      beginMs: places.map((place) =>
        place === 0
          ? [0, Infinity]
          : open[place - 1]!.split("-").map((at, edge) => Number(at) * hour - (edge % 2) * visitMs[place]!),
      ),
      rank: places.map(() => 0),
      leaveMs: 9 * hour,
      backByMs: Infinity,
      returns: true,
    };
    const best = bestOrder(run);
    expect(best).toMatchObject({ ...orderCost(run, best.order), isProved: true });
    expect(best.order).toHaveLength(20);
    expect(best.endMs).toBeLessThanOrEqual(improvedOrder(run, 2_000_000).endMs);
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
