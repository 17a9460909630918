import fc from "fast-check";
import { DateTime } from "luxon";
import { isoFromSerial } from "../../../src/domain/dates/isoFromSerial";
import { lastSerial } from "../../../src/domain/dates/lastSerial";
import { serialFromYmd } from "../../../src/domain/dates/serialFromYmd";
import { weekdayFromSerial } from "../../../src/domain/dates/weekdayFromSerial";
import { ymdFromSerial } from "../../../src/domain/dates/ymdFromSerial";

describe("serialFromYmd", () => {
  it("gives null for days that are on no calendar", () => {
    for (const [year, month, day] of [
      [2026, 2, 29],
      [2026, 4, 31],
      [2026, 13, 1],
      [2026, 0, 1],
      [2026, 1, 0],
      [1899, 12, 31],
      [10000, 1, 1],
      [2100, 2, 29],
      [NaN, 1, 1],
    ] as const)
      expect(serialFromYmd(year, month, day)).toBeNull();
  });

  it("gives every serial day of the 1900 system back from its year, month and day, one day after the other", () => {
    let wrong = 0;
    for (let serial = 1; serial <= lastSerial; serial++) {
      const { year, month, day } = ymdFromSerial(serial);
      if (serialFromYmd(year, month, day) !== serial) wrong++;
    }
    expect(wrong).toBe(0);
  });

  it("agrees with luxon on every date from March 1900 on, and on its weekday", () => {
    const epoch = DateTime.utc(1899, 12, 30);
    fc.assert(
      fc.property(fc.integer({ min: 61, max: lastSerial }), (serial) => {
        const date = epoch.plus({ days: serial });
        expect(isoFromSerial(serial)).toBe(date.toISODate());
        expect(weekdayFromSerial(serial)).toBe(date.weekday - 1);
      }),
      { numRuns: 2000 },
    );
  });

  it("cuts off the time of day", () => {
    expect(isoFromSerial(46023.999)).toBe("2026-01-01");
    expect(weekdayFromSerial(46023.999)).toBe(weekdayFromSerial(46023));
  });
});
