import fc from "fast-check";
import { STEPS_A_LOOK } from "../../../src/domain/plan/daySchedule";
import type { DayWork } from "../../../src/domain/plan/dayWork";
import { timedSteps } from "../../../src/domain/plan/timedSteps";
import { minuteByMinute } from "./minuteByMinute";
import { smallDay } from "./smallDay";

const rowOrder = (work: DayWork): number[] => work.looks.map((_, index) => index);
const withoutAfter = (work: DayWork): DayWork => ({
  ...work,
  looks: work.looks.map((look) => ({ ...look, after: [] })),
});

test("a day timed in one pass is the day lived through minute by minute", () => {
  fc.assert(
    fc.property(smallDay, fc.option(fc.integer({ min: 540, max: 660 })), (work, mealMinute) => {
      const meal = mealMinute === null ? null : { fromSeconds: mealMinute * 60, untilSeconds: mealMinute * 60 + 1500 };
      const { fromSeconds, untilSeconds } = timedSteps(work, rowOrder(work), meal);
      expect({ fromSeconds, untilSeconds }).toEqual(minuteByMinute(work, rowOrder(work), meal));
    }),
    { numRuns: 600 },
  );
});

test("any order of the looks can be timed, and the work itself is left as it was", () => {
  fc.assert(
    fc.property(smallDay, fc.integer(), (given, turn) => {
      const work = withoutAfter(given);
      const order = rowOrder(work).sort((a, b) => ((a * 7 + turn) % 5) - ((b * 7 + turn) % 5) || b - a);
      const before = structuredClone(work);
      const { fromSeconds, untilSeconds } = timedSteps(work, order, null);
      expect({ fromSeconds, untilSeconds }).toEqual(minuteByMinute(work, order, null));
      expect(work).toEqual(before);
    }),
    { numRuns: 200 },
  );
});

test("without a meal and a crossing, one dresser, chair or camera more never makes any step later", () => {
  fc.assert(
    fc.property(smallDay, fc.constantFrom("dressers", "chairs", "cameras"), (given, resource) => {
      const work = { ...given, crossingSeconds: 0 };
      const more = timedSteps({ ...work, [resource]: work[resource as "chairs"] + 1 }, rowOrder(work), null);
      timedSteps(work, rowOrder(work), null).fromSeconds.forEach((from, step) => {
        expect(more.fromSeconds[step]).toBeLessThanOrEqual(from);
      });
    }),
    { numRuns: 500 },
  );
});

test("without a meal and a crossing, a shorter shot never makes any step later", () => {
  fc.assert(
    fc.property(smallDay, fc.nat(5), (given, which) => {
      const work = { ...given, crossingSeconds: 0 };
      const looks = work.looks.map((look, index) =>
        index === which ? { ...look, shootingSeconds: look.shootingSeconds / 2 } : look,
      );
      const shorter = timedSteps({ ...work, looks }, rowOrder(work), null);
      timedSteps(work, rowOrder(work), null).fromSeconds.forEach((from, step) => {
        expect(shorter.fromSeconds[step]).toBeLessThanOrEqual(from);
      });
    }),
    { numRuns: 300 },
  );
});

test("what a step is said to wait for ends exactly when the step begins", () => {
  fc.assert(
    fc.property(smallDay, (work) => {
      const day = timedSteps(work, rowOrder(work), null);
      const until = (look: number, step: number): number => day.untilSeconds[look * STEPS_A_LOOK + step]!;
      day.fromSeconds.forEach((from, at) => {
        const look = day.waitLook[at]!;
        if (day.station[at]! < 0) return;
        switch (day.waitKind[at]) {
          case "call":
            return expect(from).toBe(work.callSeconds);
          case "arrival":
            return expect(from).toBe(work.looks[Math.floor(at / STEPS_A_LOOK)]!.thereSeconds);
          case "chair":
            return expect(from).toBe(until(look, 0));
          case "dresser":
            return expect(from).toBe(until(look, 1));
          case "talent":
            expect(work.looks[look]!.talents).toContain(day.waitTalent[at]);
            return expect(from).toBe(until(look, 2));
          case "camera":
          case "after":
            return expect(from).toBe(until(look, 2));
          case "piece":
            expect(
              work.looks[Math.floor(at / STEPS_A_LOOK)]!.pieces.some((one) => work.looks[look]!.pieces.includes(one)),
            ).toBe(true);
            return expect([until(look, 2), until(look, 2) + work.handOverSeconds]).toContain(from);
          case "crossing":
            return expect(from).toBe(until(look, 2) + work.crossingSeconds);
          case "order":
            return expect(from).toBe(day.fromSeconds[look * STEPS_A_LOOK + 2]);
          case "preparation":
            return expect([until(look, 0), until(look, 1)]).toContain(from);
          default:
            throw new Error(`a step waits for ${day.waitKind[at]} on a day without one`);
        }
      });
    }),
    { numRuns: 400 },
  );
});
