import fc from "fast-check";
import { emptyPlacedLook } from "../../../src/domain/plan/emptyPlacedLook";
import { openDay } from "../../../src/domain/plan/openDay";
import { placeLook } from "../../../src/domain/plan/placeLook";
import { setDay } from "../../../src/domain/plan/setDay";
import { smallDay } from "./smallDay";

test("a day that was set over another goes on as the first would, and each for itself", () => {
  fc.assert(
    fc.property(smallDay, fc.nat(5), (work, count) => {
      const placed = emptyPlacedLook();
      const all = work.looks.map((_, index) => index);
      const first = openDay(work);
      for (const index of all.slice(0, count)) placeLook(work, first, index, null, placed);
      const set = openDay(work);
      for (const index of all) placeLook(work, set, index, null, placed);
      setDay(set, first);
      const before = structuredClone({ ...first, previousShot: 0 });
      for (const index of all.slice(count)) placeLook(work, set, index, null, placed);
      const timesOf = ({ chairs, dressers, cameras, talentFreeSeconds, endSeconds }: typeof first): unknown => [
        chairs.freeAtSeconds,
        dressers.freeAtSeconds,
        cameras.freeAtSeconds,
        talentFreeSeconds,
        endSeconds,
      ];
      expect(timesOf(first)).toEqual(timesOf(before));
      for (const index of all.slice(count)) placeLook(work, first, index, null, placed);
      expect(timesOf(set)).toEqual(timesOf(first));
    }),
    { numRuns: 200 },
  );
});
