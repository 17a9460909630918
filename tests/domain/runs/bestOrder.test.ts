import fc from "fast-check";
import { bestOrder } from "../../../src/domain/runs/bestOrder";
import { improvedOrder } from "../../../src/domain/runs/improvedOrder";
import { orderCost } from "../../../src/domain/runs/orderCost";
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
