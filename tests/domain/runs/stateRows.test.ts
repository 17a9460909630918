import fc from "fast-check";
import { stateRows } from "../../../src/domain/runs/stateRows";

const told = fc.array(
  fc.record({ set: fc.integer({ min: 1, max: 1023 }), end: fc.nat(50), travel: fc.nat(50), pick: fc.nat(9) }),
  { maxLength: 300 },
);

test("keeps for each set and last stop the soonest end and the least travel it was told of", () => {
  fc.assert(
    fc.property(told, (all) => {
      const rows = stateRows(10);
      const known = new Map<string, { end: number; travel: number }>();
      const sets = [0];
      for (const { set, end, travel, pick } of all) {
        const stops = Array.from({ length: 10 }, (_, index) => index + 1).filter((stop) => set & (1 << (stop - 1)));
        const last = stops[pick % stops.length]!;
        rows.tell(set, last, end, travel);
        if (!sets.includes(set)) sets.push(set);
        const before = known.get(`${set} ${last}`) ?? { end: Infinity, travel: Infinity };
        known.set(`${set} ${last}`, { end: Math.min(before.end, end), travel: Math.min(before.travel, travel) });
      }
      expect(rows.sets).toEqual(sets);
      for (const set of sets.slice(1))
        for (let last = 1; last <= 10; last++) {
          if (!(set & (1 << (last - 1)))) continue;
          const { end, travel } = known.get(`${set} ${last}`) ?? { end: Infinity, travel: Infinity };
          expect([rows.endAt(rows.rowOf(set), last), rows.travelAt(rows.rowOf(set), last)]).toEqual([end, travel]);
        }
      expect(rows.rowOf(1023)).toBe(Math.max(0, sets.indexOf(1023)));
    }),
  );
});
