import { atOnce } from "../../../src/domain/plan/atOnce";
import fc from "fast-check";
import { dayEnd } from "../../../src/domain/plan/dayEnd";
import { dayOrderSteps } from "../../../src/domain/plan/dayOrderSteps";
import { layeredOrder } from "../../../src/domain/plan/layeredOrder";
import { ordersKeeping } from "./ordersKeeping";
import { rulesOfWork } from "./rulesOfWork";
import { smallDay } from "./smallDay";

test("a search that may look at few beginnings keeps to them, finds an order all the same, and says no false bound", () => {
  fc.assert(
    fc.property(smallDay, fc.integer({ min: 42, max: 200 }), (work, most) => {
      const rules = rulesOfWork(work);
      const found = atOnce(layeredOrder(rules, dayOrderSteps(work), Infinity, Infinity, most));
      const least = Math.min(...ordersKeeping(rules).map((order) => dayEnd(work, order)));
      expect(found.beginnings).toBeLessThanOrEqual(most);
      expect(found.bound).toBeLessThanOrEqual(least);
      expect(dayEnd(work, found.order!)).toBeGreaterThanOrEqual(least);
    }),
    { numRuns: 300 },
  );
});
