import fc from "fast-check";
import type { Project } from "../../../src/domain/plan/project";

/** Up to seven activities and two resources; an activity comes after earlier ones only. */
export const smallProject: fc.Arbitrary<Project> = fc
  .tuple(
    fc.array(
      fc.record({
        length: fc.nat(6),
        releasedAt: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, fc.nat(9)),
        bits: fc.oneof(fc.constant(0), fc.nat(127)),
        needs: fc.tuple(fc.nat(3), fc.nat(2)),
      }),
      { minLength: 1, maxLength: 7 },
    ),
    fc.tuple(fc.integer({ min: 3, max: 5 }), fc.integer({ min: 2, max: 3 })),
  )
  .map(([activities, capacities]) => ({
    capacities,
    activities: activities.map(({ bits, ...rest }, index) => ({
      ...rest,
      before: activities.flatMap((_, other) => (other < index && ((bits >> other) & 1) === 1 ? [other] : [])),
    })),
  }));
