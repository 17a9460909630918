import fc from "fast-check";
import type { Look } from "../../../src/domain/day/look";
import { lookCircle } from "../../../src/domain/day/lookCircle";
import { sampleLook } from "./sampleLook";

const labels = (looks: readonly Look[] | null): unknown => looks?.map(({ label }) => label) ?? null;

test("a circle is named from one look round to itself", () => {
  const looks = [
    sampleLook(1),
    sampleLook(2, { after: ["1", "3"] }),
    sampleLook(3, { after: ["4"] }),
    sampleLook(4, { after: ["2"] }),
  ];
  expect(labels(lookCircle(looks))).toEqual([2, 3, 4, 2]);
});

test("there is a circle exactly where striking out looks that wait for nobody leaves some over", () => {
  const arrows = fc.array(fc.tuple(fc.nat(6), fc.nat(6)), { maxLength: 12 });
  fc.assert(
    fc.property(arrows, (pairs) => {
      const looks = Array.from({ length: 7 }, (_, index) =>
        sampleLook(index, { after: pairs.filter(([look]) => look === index).map(([, before]) => String(before)) }),
      );
      let left = [...looks];
      for (let before = -1; before !== left.length;) {
        before = left.length;
        const keys = new Set(left.map(({ key }) => key));
        left = left.filter((look) => look.after.some((key) => keys.has(key)));
      }
      const circle = lookCircle(looks);
      expect(circle !== null).toBe(left.length > 0);
      if (circle === null) return;
      circle.slice(0, -1).forEach((look, at) => expect(look.after).toContain(circle[at + 1]!.key));
      expect(circle[0]).toBe(circle.at(-1));
    }),
    { numRuns: 500 },
  );
});
