import fc from "fast-check";
import type { DatedLook } from "../../../src/domain/day/looksOfPiece";
import { pieceOverlaps } from "../../../src/domain/day/pieceOverlaps";
import { datedDays } from "./datedDays";
import { sampleLook } from "./sampleLook";
import { sayClock } from "./sayClock";

function all(looks: Parameters<typeof datedDays>[0]): DatedLook[] {
  return datedDays(looks).flatMap((day) => day.plan.looks.map((planned) => ({ day, planned })));
}

function said(looks: readonly DatedLook[], quantity: number): string[] {
  return pieceOverlaps(looks, quantity).map(
    ({ wearing, needing, from, until }) =>
      `${wearing.look.label}>${needing.look.label} ${sayClock(from)}-${sayClock(until)}`,
  );
}

const mina = { talents: ["Mina"] };
const teo = { talents: ["Teo"] };
const three = all([
  sampleLook(1, { ...mina, changeMinutes: 10, shootingMinutes: 30 }),
  sampleLook(2, { ...teo, changeMinutes: 10, shootingMinutes: 30 }),
  sampleLook(3, { ...mina, changeMinutes: 10, shootingMinutes: 30 }),
]);

test("a look needs its pieces from the start of its change to the end of its shot", () => {
  // Changed 09:00, 09:10, 09:40; shot until 09:40, 10:10, 10:40.
  expect(said(three, 1)).toEqual(["1>2 09:10-09:40", "2>3 09:40-10:10"]);
  expect(said(three, 2)).toEqual([]);
});

test("looks that only meet do not overlap", () => {
  expect(said([three[0]!, three[2]!], 1)).toEqual([]);
});

test("hair and make-up need no piece yet, a look without a change needs it from its shot, and one that takes no time not at all", () => {
  const looks = all([
    sampleLook(1, { ...mina, changeMinutes: 10, shootingMinutes: 30 }),
    sampleLook(2, { ...teo, hairMakeupMinutes: 45, changeMinutes: 10, shootingMinutes: 30 }),
    sampleLook(3, { talents: ["Ada"] }),
  ]);
  expect(said(looks, 1)).toEqual([]);
});

test("days are kept apart", () => {
  const looks = [46111, 46112].map((date, index) =>
    sampleLook(index + 1, { date, changeMinutes: 10, shootingMinutes: 30 }),
  );
  expect(said(all(looks), 1)).toEqual([]);
});

test("there is an overlap exactly where, minute by minute, more looks need the piece than there are pieces", () => {
  const anyLook = fc.record({
    talents: fc.subarray(["Mina", "Teo", "Ada"]),
    changeMinutes: fc.nat(20),
    hairMakeupMinutes: fc.nat(20),
    shootingMinutes: fc.nat(20),
    makeupFirst: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(anyLook, { minLength: 2, maxLength: 6 }), fc.integer({ min: 1, max: 3 }), (rows, quantity) => {
      const looks = all(rows.map((row, index) => sampleLook(index + 1, row)));
      const needs = looks.map(({ planned: { steps, shootFrom, shootUntil } }) => ({
        from: Math.round((steps.find(({ kind }) => kind === "change")?.from ?? shootFrom) * 1440),
        until: Math.round(shootUntil * 1440),
      }));
      let most = 0;
      for (let minute = 0; minute < 48 * 60; minute++)
        most = Math.max(most, needs.filter(({ from, until }) => from <= minute && minute < until).length);
      expect(pieceOverlaps(looks, quantity).length > 0).toBe(most > quantity);
    }),
  );
});
