import { easterSunday } from "../../../src/domain/dates/easterSunday";
import { weekdayFromSerial } from "../../../src/domain/dates/weekdayFromSerial";
import { ymdFromSerial } from "../../../src/domain/dates/ymdFromSerial";

test("is a Sunday from 22 March to 25 April in every year a workbook can show", () => {
  for (let year = 1900; year <= 9999; year++) {
    const day = easterSunday(year)!;
    const { year: found, month, day: ofMonth } = ymdFromSerial(day);
    expect([found, weekdayFromSerial(day)]).toEqual([year, 6]);
    expect(month * 100 + ofMonth).toBeGreaterThanOrEqual(322);
    expect(month * 100 + ofMonth).toBeLessThanOrEqual(425);
  }
});

test("is null in a year that no workbook can show", () => {
  expect([1899, 10_000].map(easterSunday)).toEqual([null, null]);
});
