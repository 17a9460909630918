// RUNORDER and BAGS against every order and every packing of small cases.
import fc from "fast-check";
import { standInHost } from "../standInHost";
import { drawnFrom } from "./drawn";
import { resultOf } from "./resultOf";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

const LEAVE = 9 * 60;
const DAY_MINUTES = 1440;

test("RUNORDER: no order that keeps every opening time ends sooner, nor as soon with less travel; else as many stops as can be", () => {
  fc.assert(
    fc.property(fc.gen(), (value) => {
      const draw = drawnFrom(value);
      const count = draw.whole(1, 5);
      const between = Array.from({ length: count + 1 }, (_, from) =>
        Array.from({ length: count + 1 }, (__, to) => (from === to ? 0 : draw.whole(5, 60))),
      );
      const stops = Array.from({ length: count }, () => {
        const open = draw.often(60) ? draw.whole(8, 13) * 60 : null;
        const close = draw.often(60) ? (open ?? 10 * 60) + draw.whole(1, 6) * 60 : null;
        return { open, close, minutes: draw.one([0, 5, 10, 30]) };
      });
      const returns = draw.one([null, true, false]);
      const home = (at: number): number => (returns === false ? 0 : between[at]![0]!);
      let best = { visits: -1, end: Infinity, travel: Infinity };
      const tryFrom = (visited: readonly number[], at: number, now: number, travelled: number): void => {
        const end = now + home(at);
        const travel = travelled + home(at);
        const isBetter = visited.length - best.visits || best.end - end || best.travel - travel;
        if (isBetter > 0) best = { visits: visited.length, end, travel };
        for (const [index, stop] of stops.entries()) {
          const arrive = now + between[at]![index + 1]!;
          const leave = Math.max(arrive, stop.open ?? 0) + stop.minutes;
          if (visited.includes(index) || leave > (stop.close ?? DAY_MINUTES)) continue;
          tryFrom([...visited, index], index + 1, leave, travelled + between[at]![index + 1]!);
        }
      };
      tryFrom([], 0, LEAVE, 0);
      const time = (minutes: number | null): unknown =>
        minutes === null ? draw.one([null, ""]) : minutes / DAY_MINUTES;
      const cells = [
        ["Stop", "Open", "Close", "Minutes"],
        ["Base", null, null, null],
        ...stops.map(({ open, close, minutes }, index) => [`S${index}`, time(open), time(close), minutes]),
      ];
      const rows = (resultOf("RUNORDER", cells, between, LEAVE / DAY_MINUTES, returns) as unknown[][]).slice(1);
      expect(rows).toHaveLength(1 + count + (returns === false ? 0 : 1));
      // What cannot be met stands with an error behind what can, and before the return.
      const met = rows.slice(1, 1 + count).filter((row) => typeof row[1] === "number");
      expect(met).toHaveLength(best.visits);
      let [at, now, travel] = [0, LEAVE, 0];
      for (const [name, arrive, wait, leave] of met) {
        const index = Number((name as string).slice(1));
        const { open, close, minutes } = stops[index]!;
        const reached = now + between[at]![index + 1]!;
        travel += between[at]![index + 1]!;
        now = Math.max(reached, open ?? 0) + minutes;
        at = index + 1;
        expect((arrive as number) * DAY_MINUTES).toBeCloseTo(reached, 3);
        expect(wait).toBeCloseTo(now - minutes - reached, 3);
        expect((leave as number) * DAY_MINUTES).toBeCloseTo(now, 3);
        expect(now).toBeLessThanOrEqual(close ?? DAY_MINUTES);
      }
      expect([now + home(at), travel + home(at)]).toEqual([best.end, best.travel]);
    }),
    { numRuns: 250, endOnFailure: true },
  );
});

test("BAGS: no packing of the pieces under the limit has fewer bags, and each bag is at or under it", () => {
  fc.assert(
    fc.property(fc.gen(), (value) => {
      const draw = drawnFrom(value);
      const limit = draw.whole(2, 6) * 1000;
      const rows = Array.from({ length: draw.whole(0, 4) }, (_, index) => ({
        name: `P${index}`,
        grams: draw.whole(1, 32) * 200,
        quantity: draw.whole(1, 2),
      }));
      const pieces = rows.flatMap(({ name, grams, quantity }) =>
        Array.from({ length: quantity }, () => ({ name, grams })),
      );
      const packed = pieces.filter(({ grams }) => grams <= limit);
      let fewest = packed.length;
      const tryFrom = (next: number, loads: readonly number[]): void => {
        if (loads.length >= fewest) return;
        if (next === packed.length) fewest = loads.length;
        else
          for (let bag = 0; bag <= loads.length; bag++) {
            const load = (loads[bag] ?? 0) + packed[next]!.grams;
            if (load <= limit) tryFrom(next + 1, [...loads.slice(0, bag), load, ...loads.slice(bag + 1)]);
          }
      };
      tryFrom(0, []);
      const cells = [
        ["Quantity", "Weight", "Piece"],
        ...rows.map(({ name, grams, quantity }) => [
          quantity === 1 ? draw.one([null, "", 1]) : quantity,
          draw.one([grams / 1000, `${grams} g`, `${grams / 1000}kg`]),
          name,
        ]),
      ];
      const result = (resultOf("BAGS", cells, draw.one([limit / 1000, `${limit / 1000} kg`])) as unknown[][]).slice(1);
      expect(result.map(([name, weight]) => [name, weight])).toEqual(
        pieces.map(({ name, grams }) => [name, expect.closeTo(grams / 1000, 9)]),
      );
      const loads: number[] = [];
      for (const [place, [, , bag]] of result.entries()) {
        const { grams } = pieces[place]!;
        expect(typeof bag).toBe(grams > limit ? "object" : "number");
        if (typeof bag !== "number") continue;
        // Numbered as they first appear.
        expect(bag).toBeLessThanOrEqual(loads.length + 1);
        loads[bag - 1] = (loads[bag - 1] ?? 0) + grams;
      }
      expect(loads).toHaveLength(fewest);
      expect(Math.max(0, ...loads)).toBeLessThanOrEqual(limit);
    }),
    { numRuns: 250, endOnFailure: true },
  );
});
