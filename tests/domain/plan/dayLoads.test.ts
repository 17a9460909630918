import fc from "fast-check";
import { dayLoads } from "../../../src/domain/plan/dayLoads";
import type { DayWork, WorkLook } from "../../../src/domain/plan/dayWork";
import { openDay } from "../../../src/domain/plan/openDay";
import { soonestEnd } from "../../../src/domain/plan/soonestEnd";
import { timedSteps } from "../../../src/domain/plan/timedSteps";
import { ordersKeeping } from "./ordersKeeping";

const look = (changeSeconds: number, shootingSeconds: number): WorkLook => ({
  talents: [],
  thereSeconds: 0,
  lastToArrive: -1,
  hairMakeupSeconds: 0,
  changeSeconds,
  changeSecondsFrom: null,
  shootingSeconds,
  makeupFirst: true,
  set: -1,
  pieces: [],
  wearers: 0,
  after: [],
  shotAtSeconds: null,
});
const dayOf = (looks: WorkLook[]): DayWork => ({
  callSeconds: 0,
  looks,
  talentCount: 0,
  chairs: 1,
  dressers: 1,
  cameras: 1,
  crossingSeconds: 0,
  pieceCount: 0,
  handOverSeconds: 0,
  meal: null,
});

test("one dresser and one camera are two machines: no order is sooner than Johnson's (1954), and the bound is just that", () => {
  const minutes = fc.integer({ min: 1, max: 30 });
  fc.assert(
    fc.property(fc.array(fc.tuple(minutes, minutes), { minLength: 1, maxLength: 5 }), (pairs) => {
      const work = dayOf(pairs.map(([change, shot]) => look(change, shot)));
      const loads = dayLoads(work);
      const all = work.looks.map((_, index) => index);
      const ends = ordersKeeping({ count: all.length, before: all.map(() => []), placeOf: all.map(() => -1) }).map(
        (order) => timedSteps(work, order, null).endSeconds,
      );
      const johnson = loads.dresserFirst.map((pair) => pair.look);
      expect(timedSteps(work, johnson, null).endSeconds).toBe(Math.min(...ends));
      expect(soonestEnd(work, loads, openDay(work), all, 0)).toBe(Math.min(...ends));
    }),
    { numRuns: 150 },
  );
});

test("with several dressers there is no pair", () => {
  const work = { ...dayOf([look(1, 2), look(2, 1)]), dressers: 2 };
  expect(dayLoads(work).dresserFirst).toEqual([]);
});
