import fc from "fast-check";
import type { DayWork, WorkLook } from "../../../src/domain/plan/dayWork";

const CALL = 9 * 3600;
const minutes = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max }).map((m) => m * 60);
/** Many equal lengths, so that ties are common. */
const length = fc.oneof(fc.constantFrom(0, 300, 600, 900), minutes(0, 25));

const look: fc.Arbitrary<Omit<WorkLook, "lastToArrive" | "after" | "wearers"> & { afterBits: number }> = fc.record({
  talents: fc.uniqueArray(fc.integer({ min: 0, max: 2 }), { maxLength: 2 }),
  thereSeconds: fc.oneof({ weight: 4, arbitrary: fc.constant(CALL) }, { weight: 1, arbitrary: minutes(540, 640) }),
  hairMakeupSeconds: length,
  changeSeconds: length,
  changeSecondsFrom: fc.oneof(
    { weight: 3, arbitrary: fc.constant(null) },
    { weight: 1, arbitrary: fc.array(fc.tuple(fc.integer({ min: 0, max: 5 }), length)).map((pairs) => new Map(pairs)) },
  ),
  shootingSeconds: length,
  makeupFirst: fc.boolean(),
  set: fc.integer({ min: -1, max: 1 }),
  shotAtSeconds: fc.constant(null),
  pieces: fc.oneof(
    { weight: 2, arbitrary: fc.constant([]) },
    { weight: 1, arbitrary: fc.subarray([0, 1], { minLength: 1 }) },
  ),
  afterBits: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.nat(31) }),
});

/** A small day in whole minutes: one to six looks, three talents at most, nothing shot yet. A look comes after earlier ones only. */
export const smallDay: fc.Arbitrary<DayWork> = fc
  .record({
    callSeconds: fc.constant(CALL),
    looks: fc.array(look, { minLength: 1, maxLength: 6 }),
    talentCount: fc.constant(3),
    chairs: fc.integer({ min: 1, max: 3 }),
    dressers: fc.integer({ min: 1, max: 3 }),
    cameras: fc.oneof({ weight: 3, arbitrary: fc.constant(1) }, { weight: 1, arbitrary: fc.constantFrom(2, 3) }),
    crossingSeconds: fc.constantFrom(0, 0, 300, 720),
    pieceCount: fc.constant(2),
    handOverSeconds: fc.constantFrom(0, 300, 900),
    meal: fc.option(fc.record({ dueSeconds: minutes(540, 640), lengthSeconds: minutes(1, 45) })),
  })
  .map((day) => ({
    ...day,
    looks: day.looks.map(({ afterBits, ...rest }, index) => ({
      ...rest,
      wearers:
        rest.talents.length === 0 ? 8 + index : rest.talents.reduce((wearers, talent) => wearers + (1 << talent), 0),
      lastToArrive: rest.thereSeconds > CALL ? (rest.talents[0] ?? -1) : -1,
      after: [0, 1, 2, 3, 4].filter((other) => other < index && (afterBits & (1 << other)) !== 0),
    })),
  }));
