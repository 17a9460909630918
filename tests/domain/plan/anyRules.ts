import fc from "fast-check";
import type { OrderRules } from "../../../src/domain/plan/orderRules";

/** Up to six things, some that come before others without going in a circle, some with a place of their own. */
export const anyRules: fc.Arbitrary<OrderRules> = fc.integer({ min: 1, max: 6 }).chain((count) =>
  fc
    .record({
      ranks: fc.shuffledSubarray(
        Array.from({ length: count }, (_, thing) => thing),
        { minLength: count },
      ),
      bits: fc.array(fc.oneof({ weight: 2, arbitrary: fc.constant(0) }, fc.nat(63)), {
        minLength: count,
        maxLength: count,
      }),
      places: fc.uniqueArray(fc.nat(count - 1), { maxLength: 2 }),
    })
    .map(({ ranks, bits, places }) => ({
      count,
      before: ranks.map((rank, thing) =>
        ranks.flatMap((other, at) => (other < rank && ((bits[thing]! >> at) & 1) === 1 ? [at] : [])),
      ),
      placeOf: ranks.map((_, thing) => places[thing] ?? -1),
    })),
);
