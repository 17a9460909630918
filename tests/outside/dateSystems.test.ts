import { isoFromSerial } from "../../src/domain/dates/isoFromSerial";
import { isSerialDay } from "../../src/domain/dates/isSerialDay";
import { lastSerial } from "../../src/domain/dates/lastSerial";
import { serialFrom1904 } from "../../src/domain/dates/serialFrom1904";
import { serialFromYmd } from "../../src/domain/dates/serialFromYmd";
import { weekdayFromSerial } from "../../src/domain/dates/weekdayFromSerial";
import published from "./publishedWorkdays.json";

// ECMA-376 1st edition, Part 4, 3.17.4.1 Date Representation (read).
const { base1900, base1904, differenceDays, knownSerials } = published.dateSystems;

describe("serial days against ECMA-376, Part 4, 3.17.4.1", () => {
  it("begin with 1900-01-01 as 1 and end with 9999-12-31 as 2958465", () => {
    for (const [iso, serial] of [base1900.first, base1900.last] as [string, number][]) {
      expect(isoFromSerial(serial)).toBe(iso);
      expect(isSerialDay(serial)).toBe(true);
    }
    expect(lastSerial).toBe(base1900.last[1]);
    for (const outside of [0, -1, lastSerial + 1, NaN]) expect(isSerialDay(outside)).toBe(false);
  });

  it("hold the fictitious 1900-02-29 as 60, between 59 and 61", () => {
    expect(base1900.serial_60).toBe(`fictitious ${isoFromSerial(60)}`);
    expect(isoFromSerial(59)).toBe(base1900.serial_59);
    expect(isoFromSerial(61)).toBe(base1900.serial_61);
    expect([59, 60, 61]).toEqual([serialFromYmd(1900, 2, 28), serialFromYmd(1900, 2, 29), serialFromYmd(1900, 3, 1)]);
  });

  it("have weekdays one day early before March 1900: 1 January 1900, a Monday, counts as a Sunday", () => {
    expect(weekdayFromSerial(1)).toBe(6);
    expect(weekdayFromSerial(60)).toBe(2);
    // 1 March 1900 was a Thursday.
    expect(weekdayFromSerial(61)).toBe(3);
  });

  it("lie 1462 days behind those of a 1904 workbook", () => {
    for (const [iso, serial] of [base1904.first, base1904.last] as [string, number][])
      expect(isoFromSerial(serialFrom1904(serial))).toBe(iso);
    expect(serialFrom1904(0)).toBe(differenceDays);
  });

  it("give the serials the function pages print", () => {
    for (const [iso, serial] of Object.entries(knownSerials)) expect(isoFromSerial(serial)).toBe(iso);
  });
});
