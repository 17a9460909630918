import fc from "fast-check";
import { dayLoads } from "../../../src/domain/plan/dayLoads";
import { emptyPlacedLook } from "../../../src/domain/plan/emptyPlacedLook";
import { leastChangeNow } from "../../../src/domain/plan/leastChangeNow";
import { mayEndBy } from "../../../src/domain/plan/mayEndBy";
import { openDay } from "../../../src/domain/plan/openDay";
import { placeLook } from "../../../src/domain/plan/placeLook";
import { changeSecondsFor } from "../../../src/domain/plan/changeSecondsFor";
import { smallDay } from "./smallDay";

test("where it says that no step of a look can end by then none does, and no change is shorter than the shortest said", () => {
  fc.assert(
    fc.property(smallDay, fc.integer({ min: 540, max: 660 }), fc.nat(6), (work, minute, placedCount) => {
      const bySeconds = minute * 60;
      const { leastChange } = dayLoads(work);
      const state = openDay(work);
      const placed = emptyPlacedLook();
      const all = work.looks.map((_, index) => index);
      const left = all.slice(placedCount);
      for (const index of all.slice(0, placedCount)) placeLook(work, state, index, null, placed);
      const never = left.filter((index) => !mayEndBy(work, state, index, leastChange[index]!, bySeconds));
      const shortest = left.map((index) => leastChangeNow(work, state, index, left));
      left.forEach((index, at) => {
        const change = changeSecondsFor(work.looks[index]!, state.lastLookOf);
        expect(change).toBeGreaterThanOrEqual(shortest[at]!);
        expect(change).toBeGreaterThanOrEqual(leastChange[index]!);
        placeLook(work, state, index, null, placed);
        if (!never.includes(index)) return;
        placed.untilSeconds.forEach((until, step) => {
          if (until > placed.fromSeconds[step]!) expect(until).toBeGreaterThan(bySeconds);
        });
      });
    }),
    { numRuns: 500 },
  );
});
