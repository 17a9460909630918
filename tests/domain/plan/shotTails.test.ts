import fc from "fast-check";
import { shotTails } from "../../../src/domain/plan/shotTails";
import { timedSteps } from "../../../src/domain/plan/timedSteps";
import { ordersKeeping } from "./ordersKeeping";
import { rulesOfWork } from "./rulesOfWork";
import { smallDay } from "./smallDay";

const oneCamera = smallDay.map((day) => ({ ...day, cameras: 1, meal: null }));

test("from the end of any shot no order ends sooner than the tail of the looks that are left", () => {
  fc.assert(
    fc.property(oneCamera, fc.nat(), (work, which) => {
      const { tailSeconds } = shotTails(work)!;
      const orders = ordersKeeping(rulesOfWork(work));
      const order = orders[which % orders.length]!;
      const { untilSeconds, endSeconds } = timedSteps(work, order, null);
      order.forEach((look, place) => {
        const left = order.slice(place + 1).reduce((bits, other) => bits | (1 << other), 0);
        const tail = tailSeconds[left * order.length + look]!;
        expect(untilSeconds[look * 3 + 2]! + tail).toBeLessThanOrEqual(endSeconds);
      });
    }),
    { numRuns: 1000 },
  );
});

test("the tail is the least sum of gaps and shots over all orders of what is left", () => {
  fc.assert(
    fc.property(oneCamera, (work) => {
      const { gapSeconds, tailSeconds } = shotTails(work)!;
      const count = work.looks.length;
      const rules = rulesOfWork(work);
      const sums = ordersKeeping(rules)
        .filter(([first]) => first === 0)
        .map((order) =>
          order.slice(1).reduce((sum, next, at) => {
            return sum + gapSeconds[order[at]! * count + next]! + work.looks[next]!.shootingSeconds;
          }, 0),
        );
      expect(tailSeconds[((1 << count) - 2) * count]).toBe(Math.min(...sums));
    }),
    { numRuns: 200 },
  );
});

test("there are none with several cameras, with many looks, or once a look has been shot", () => {
  const [day] = fc.sample(oneCamera, 1) as [Parameters<typeof shotTails>[0]];
  const look = day.looks[0]!;
  expect(shotTails({ ...day, cameras: 2 })).toBeNull();
  expect(shotTails({ ...day, looks: Array.from({ length: 16 }, () => look) })).toBeNull();
  expect(shotTails({ ...day, looks: [{ ...look, shotAtSeconds: 40_000 }] })).toBeNull();
});
