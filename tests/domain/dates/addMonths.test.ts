import fc from "fast-check";
import { DateTime } from "luxon";
import { addMonths } from "../../../src/domain/dates/addMonths";
import { lastSerial } from "../../../src/domain/dates/lastSerial";
import { serialFromYmd } from "../../../src/domain/dates/serialFromYmd";

describe("addMonths", () => {
  it("clips at the month's end", () => {
    expect(addMonths(serialFromYmd(2026, 1, 31)!, 1)).toBe(serialFromYmd(2026, 2, 28));
    expect(addMonths(serialFromYmd(2028, 1, 31)!, 1)).toBe(serialFromYmd(2028, 2, 29));
    expect(addMonths(serialFromYmd(2026, 3, 31)!, -1)).toBe(serialFromYmd(2026, 2, 28));
    expect(addMonths(serialFromYmd(2026, 11, 30)!, 3)).toBe(serialFromYmd(2027, 2, 28));
  });

  it("agrees with luxon's month arithmetic from March 1900 on", () => {
    const epoch = DateTime.utc(1899, 12, 30);
    fc.assert(
      fc.property(fc.integer({ min: 61, max: 100000 }), fc.integer({ min: 0, max: 600 }), (serial, months) => {
        const expected = epoch.plus({ days: serial }).plus({ months });
        expect(addMonths(serial, months)).toBe(Math.round(expected.diff(epoch, "days").days));
      }),
      { numRuns: 2000 },
    );
  });

  it("is null where no workbook can show the day", () => {
    expect(addMonths(lastSerial, 1)).toBeNull();
    expect(addMonths(1, -1)).toBeNull();
  });
});
