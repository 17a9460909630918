import fc from "fast-check";
import { calendarOf } from "../../../src/domain/dates/calendarOf";
import { openDayOnOrAfter } from "../../../src/domain/dates/openDayOnOrAfter";
import { openDayOnOrBefore } from "../../../src/domain/dates/openDayOnOrBefore";
import { workdayOffset } from "../../../src/domain/dates/workdayOffset";
import { workdaysBetween } from "../../../src/domain/dates/workdaysBetween";

const SATURDAY_AND_SUNDAY = 0b1100000;

/** Day by day, with nothing prepared: slow and plainly right. */
function isWorked(serial: number, closedWeekdays: number, closed: readonly number[]): boolean {
  return ((closedWeekdays >> ((serial + 5) % 7)) & 1) === 0 && !closed.includes(serial);
}

function walk(serial: number, workdays: number, closedWeekdays: number, closed: readonly number[]): number {
  let day = serial;
  for (let left = Math.abs(workdays); left > 0;) {
    day += Math.sign(workdays);
    if (isWorked(day, closedWeekdays, closed)) left--;
  }
  return day;
}

const someDay = fc.integer({ min: 46000, max: 46120 });
const someWeekend = fc.integer({ min: 0, max: 126 });
const someClosed = fc.array(someDay, { maxLength: 40 });

describe("workdayOffset", () => {
  it("agrees with a day-by-day walk for every weekend and any closed dates, forwards and back", () => {
    fc.assert(
      fc.property(
        someDay,
        fc.integer({ min: -80, max: 80 }),
        someWeekend,
        someClosed,
        (day, workdays, weekend, closed) => {
          const calendar = calendarOf(weekend, closed);
          expect(workdayOffset(day, workdays, calendar)).toBe(walk(day, workdays, weekend, closed));
        },
      ),
      { numRuns: 3000 },
    );
  });

  it("is the day itself for 0 working days, worked or not", () => {
    const saturday = 46025;
    expect(workdayOffset(saturday, 0, calendarOf(SATURDAY_AND_SUNDAY, [saturday]))).toBe(saturday);
  });

  it("is null when every weekday is closed, unless 0 days are asked", () => {
    expect(workdayOffset(46023, 1, calendarOf(0b1111111))).toBeNull();
    expect(workdayOffset(46023, -1, calendarOf(0b1111111))).toBeNull();
    expect(workdayOffset(46023, 0, calendarOf(0b1111111))).toBe(46023);
  });

  it("counts a hundred million working days without walking them", () => {
    expect(workdayOffset(46023, 100_000_000, calendarOf(SATURDAY_AND_SUNDAY))).toBe(46023 + 140_000_000);
  });
});

describe("workdaysBetween", () => {
  it("agrees with a day-by-day count, and turns its sign when the days are turned", () => {
    fc.assert(
      fc.property(someDay, someDay, fc.integer({ min: 0, max: 127 }), someClosed, (a, b, weekend, closed) => {
        let count = 0;
        for (let day = Math.min(a, b); day <= Math.max(a, b); day++) if (isWorked(day, weekend, closed)) count++;
        expect(workdaysBetween(a, b, calendarOf(weekend, closed))).toBe(a > b ? 0 - count : count);
      }),
      { numRuns: 2000 },
    );
  });

  it("undoes workdayOffset: so many working days after a day lie in the span that begins the day after it", () => {
    fc.assert(
      fc.property(
        someDay,
        fc.integer({ min: 1, max: 200 }),
        someWeekend,
        someClosed,
        (day, workdays, weekend, closed) => {
          const calendar = calendarOf(weekend, closed);
          expect(workdaysBetween(day + 1, workdayOffset(day, workdays, calendar)!, calendar)).toBe(workdays);
        },
      ),
    );
  });

  it("is 0 when every weekday is closed", () => {
    expect(workdaysBetween(46023, 46100, calendarOf(0b1111111, [46024]))).toBe(0);
  });
});

describe("openDayOnOrBefore and openDayOnOrAfter", () => {
  it("give the nearest worked day on their side", () => {
    fc.assert(
      fc.property(someDay, someWeekend, someClosed, (day, weekend, closed) => {
        const calendar = calendarOf(weekend, closed);
        let before = day;
        while (!isWorked(before, weekend, closed)) before--;
        let after = day;
        while (!isWorked(after, weekend, closed)) after++;
        expect(openDayOnOrBefore(day, calendar)).toBe(before);
        expect(openDayOnOrAfter(day, calendar)).toBe(after);
      }),
    );
  });

  it("give null when every weekday is closed", () => {
    expect(openDayOnOrBefore(46023, calendarOf(0b1111111))).toBeNull();
    expect(openDayOnOrAfter(46023, calendarOf(0b1111111))).toBeNull();
  });
});
