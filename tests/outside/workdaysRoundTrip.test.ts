import fc from "fast-check";
import { daysout } from "../../src/functions/bindings/daysout";
import { due } from "../../src/functions/bindings/due";
import { sendby } from "../../src/functions/bindings/sendby";

/**
 * WORKDAY and NETWORKDAYS (OpenFormula 6.10.22 and 6.10.14) undo each other: so many working days on from a day, and counted back
 * again, whatever the closed weekdays, and with closed days that stand twice or on a weekend, in any order. The second count walks
 * day by day and asks of each whether it is worked; it shares nothing with the functions.
 */
const FIRST = 46_023;
const someCalendar = fc.record({
  /** Monday first; at least one day of the week is worked. */
  weekend: fc
    .array(fc.boolean(), { minLength: 7, maxLength: 7 })
    .filter((closed) => closed.includes(false))
    .map((closed) => closed.map((isClosed) => (isClosed ? "1" : "0")).join("")),
  closed: fc
    .array(fc.integer({ min: FIRST - 60, max: FIRST + 120 }), { maxLength: 25 })
    .map((days) => [...days, ...days.slice(0, 5)]),
});
const someStart = fc.integer({ min: FIRST, max: FIRST + 40 });

const isWorked = (day: number, weekend: string, closed: readonly number[]): boolean =>
  weekend[(day + 5) % 7] === "0" && !closed.includes(day);

function walked(start: number, workdays: number, weekend: string, closed: readonly number[]): number {
  let day = start;
  for (let left = Math.abs(workdays); left > 0;) {
    day += Math.sign(workdays);
    if (isWorked(day, weekend, closed)) left--;
  }
  return day;
}

test("DUE in working days is the day a walk comes to, and DAYSOUT in working days counts back to the start", () => {
  fc.assert(
    fc.property(someStart, fc.integer({ min: 1, max: 60 }), someCalendar, (start, count, { weekend, closed }) => {
      const range = closed.map((day) => [day]);
      const day = due(start, `${count} working days`, null, range, weekend) as number;
      expect(day).toBe(walked(start, count, weekend, closed));
      expect(daysout(start, day, null, "working", range, weekend)).toBe(count);
      // The day before it is not yet so many, however many closed days lie between.
      expect(daysout(start, day - 1, null, "working", range, weekend)).toBe(count - 1);
    }),
    { numRuns: 1000 },
  );
});

test("SENDBY goes back as far as the walk does, and as many working days lie between as it was asked for", () => {
  fc.assert(
    fc.property(someStart, fc.integer({ min: 1, max: 20 }), someCalendar, (start, count, { weekend, closed }) => {
      const range = closed.map((day) => [day]);
      let dueDay = start + 30;
      while (!isWorked(dueDay, weekend, closed)) dueDay++;
      const sent = sendby(dueDay, count, null, range, weekend) as number;
      expect(sent).toBe(walked(dueDay, -count, weekend, closed));
      expect(daysout(sent, dueDay, null, "working", range, weekend)).toBe(count);
    }),
    { numRuns: 1000 },
  );
});

test("closed days that stand twice, on a weekend or in another order change nothing", () => {
  fc.assert(
    fc.property(someStart, fc.integer({ min: 1, max: 60 }), someCalendar, (start, count, { weekend, closed }) => {
      const terms = `${count} working days`;
      const tidy = [...new Set(closed)].filter((day) => weekend[(day + 5) % 7] === "0").sort((a, b) => a - b);
      const [asTyped, once] = [closed, tidy].map((days) =>
        due(
          start,
          terms,
          null,
          days.map((day) => [day]),
          weekend,
        ),
      );
      expect(asTyped).toBe(once);
      expect(due(start, terms, null, [[...closed].reverse()], weekend)).toBe(once);
    }),
    { numRuns: 500 },
  );
});
