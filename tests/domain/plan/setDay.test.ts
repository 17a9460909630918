import fc from "fast-check";
import { copiedDay } from "../../../src/domain/plan/copiedDay";
import { emptyPlacedLook } from "../../../src/domain/plan/emptyPlacedLook";
import { openDay } from "../../../src/domain/plan/openDay";
import { placeLook } from "../../../src/domain/plan/placeLook";
import { setDay } from "../../../src/domain/plan/setDay";
import { smallDay } from "./smallDay";

test("a day that was copied, or set over another, goes on as the first would, and each for itself", () => {
  fc.assert(
    fc.property(smallDay, fc.nat(5), (work, count) => {
      const placed = emptyPlacedLook();
      const all = work.looks.map((_, index) => index);
      const first = openDay(work);
      for (const index of all.slice(0, count)) placeLook(work, first, index, null, placed);
      const copy = copiedDay(work, first);
      const set = openDay(work);
      for (const index of all) placeLook(work, set, index, null, placed);
      setDay(set, first);
      const before = structuredClone({ ...first, previousShot: 0 });
      for (const state of [copy, set])
        for (const index of all.slice(count)) placeLook(work, state, index, null, placed);
      const timesOf = ({ chairs, dressers, cameras, talentFreeSeconds, endSeconds }: typeof first): unknown => [
        chairs.freeAtSeconds,
        dressers.freeAtSeconds,
        cameras.freeAtSeconds,
        talentFreeSeconds,
        endSeconds,
      ];
      expect(timesOf(first)).toEqual(timesOf(before));
      for (const index of all.slice(count)) placeLook(work, first, index, null, placed);
      expect(timesOf(copy)).toEqual(timesOf(first));
      expect(timesOf(set)).toEqual(timesOf(first));
    }),
    { numRuns: 200 },
  );
});
