import fc from "fast-check";
import type { Lift } from "../../../../src/domain/carry/lifting/lift";
import { liftIndex } from "../../../../src/domain/carry/lifting/liftIndex";
import { liftLimit } from "../../../../src/domain/carry/lifting/liftLimit";
import { sayProblem } from "../../../../src/domain/wording";

describe("liftIndex", () => {
  const easiest: Lift = {
    unit: "kg",
    horizontal: 25,
    vertical: 75,
    travel: 25,
    angle: 0,
    liftsPerMinute: 0.2,
    hours: 1,
    grip: "good",
  };

  it("is the load over the limit", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 63, noNaN: true }),
        (load, horizontal) => {
          const lift = { ...easiest, horizontal };
          expect(liftIndex(load, lift)).toEqual({ ok: true, value: load / liftLimit(lift) });
        },
      ),
    );
  });

  it.each<[Partial<Lift>, string]>([
    [
      { horizontal: 64 },
      'horizontal: at "64" the lifting equation recommends no load, so there is no index; change the lift to at most 63.',
    ],
    [{ vertical: 176 }, 'vertical: at "176"'],
    [{ travel: 176 }, "at most 175"],
    [{ angle: 136 }, "at most 135"],
    [{ hours: 9 }, "at most 8"],
    [
      { liftsPerMinute: 16 },
      'liftsPerMinute: at "16" the lifting equation recommends no load, so there is no index; change the lift to at most 15.',
    ],
    [{ liftsPerMinute: 9, hours: 8, vertical: 20 }, "fewer than 9"],
    [{ liftsPerMinute: 12.5, hours: 2 }, ""],
    [{ liftsPerMinute: 13, hours: 2 }, "fewer than 13"],
  ])("%j has none, or says what would have one", (change, sentence) => {
    const index = liftIndex(10, { ...easiest, ...change });
    if (sentence === "") expect(index.ok).toBe(true);
    else expect(index.ok ? "an index" : sayProblem(index.problem)).toContain(sentence);
  });
});
