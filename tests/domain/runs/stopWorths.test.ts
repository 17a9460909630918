import fc from "fast-check";
import { stopWorths } from "../../../src/domain/runs/stopWorths";
import { urgencyRanks } from "../../../src/domain/runs/urgencyRanks";

test("one stop of a lower rank outweighs all of higher ranks, exactly, for a hundred stops of twenty ranks", () => {
  const ranks = Array.from({ length: 100 }, (_, index) => index % 20);
  const worths = stopWorths(ranks);
  expect(worths.reduce((sum, worth) => sum + worth, 0)).toBeLessThan(Number.MAX_SAFE_INTEGER);
  for (let rank = 0; rank < 20; rank++) {
    const higher = worths.filter((_, index) => ranks[index]! > rank).reduce((sum, worth) => sum + worth, 0);
    expect(worths[rank]!).toBeGreaterThan(higher);
  }
});

test("sums compare as the numbers met of each rank do", () => {
  const set = fc.uniqueArray(fc.nat(9));
  fc.assert(
    fc.property(fc.array(fc.nat(3), { minLength: 10, maxLength: 10 }), set, set, (ranks, one, other) => {
      const worths = stopWorths(ranks);
      const worth = (met: readonly number[]): number => met.reduce((sum, index) => sum + worths[index]!, 0);
      const counts = (met: readonly number[]) =>
        [0, 1, 2, 3].map((rank) => met.filter((at) => ranks[at] === rank).length);
      const first =
        counts(one)
          .map((count, rank) => count - counts(other)[rank]!)
          .find((more) => more !== 0) ?? 0;
      expect(Math.sign(worth(one) - worth(other))).toBe(Math.sign(first));
    }),
  );
});

test("ranks follow the due days, what has none comes last, and the twentieth and all later are one", () => {
  expect(urgencyRanks([46090, null, 46085, 46090])).toEqual([1, 2, 0, 1]);
  expect(urgencyRanks([null, null])).toEqual([0, 0]);
  const many = urgencyRanks(Array.from({ length: 30 }, (_, index) => 46000 + index));
  expect(many.slice(17, 22)).toEqual([17, 18, 19, 19, 19]);
});
