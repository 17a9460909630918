import fc from "fast-check";
import { calendarOf } from "../../src/domain/dates/calendarOf";
import { sayProblem } from "../../src/domain/wording";
import { readCalendar } from "../../src/sheet/readCalendar";

const MONDAY_TO_FRIDAY = 0b1100000;

function sentence(closed: unknown, weekend: unknown): string {
  const calendar = readCalendar(closed, weekend);
  return calendar.ok ? "no problem" : sayProblem(calendar.problem);
}

describe("readCalendar", () => {
  it("is Monday to Friday with no closed dates when both are left out, however hosts send that", () => {
    for (const blank of [null, undefined, "", 0, " ", [[null]], [[0]], [[""]]])
      expect(readCalendar(blank, Array.isArray(blank) ? blank : (blank ?? null))).toEqual({
        ok: true,
        value: calendarOf(MONDAY_TO_FRIDAY),
      });
  });

  it("reads closed dates in any order, twice, on weekends, with times, as text and with blanks between", () => {
    const closed = [[46120], [null], ["2026-04-03"], [0], [46115.5], [""], [46025], ["6 Apr 2026"], [46120]];
    expect(readCalendar(closed, null)).toEqual({
      ok: true,
      value: calendarOf(MONDAY_TO_FRIDAY, [46115, 46118, 46120]),
    });
  });

  it("reads closed dates that lie in a row, in a block, alone, or with a format", () => {
    const expected = { ok: true, value: calendarOf(MONDAY_TO_FRIDAY, [46115, 46118]) };
    for (const closed of [
      [[46115, 46118]],
      [
        [46115, 0],
        [46118, null],
      ],
      [46118, 46115],
      [[{ type: "FormattedNumber", basicValue: 46115, numberFormat: "yyyy-mm-dd" }], [46118]],
    ])
      expect(readCalendar(closed, null)).toEqual(expected);
    expect(readCalendar(46115, null)).toEqual({ ok: true, value: calendarOf(MONDAY_TO_FRIDAY, [46115]) });
  });

  it("reads the first column below a row of headings, so that dates with their names can be passed", () => {
    const date = (basicValue: number) => ({ type: "Double", basicValue, numberFormat: "yyyy-mm-dd" });
    const expected = { ok: true, value: calendarOf(MONDAY_TO_FRIDAY, [46115, 46118]) };
    for (const closed of [
      [
        ["Date", "Holiday"],
        [date(46115), "Good Friday"],
        [date(46118), "Easter Monday"],
      ],
      [["Closed days"], [46118], [""], [46115]],
      [
        ["Date", ""],
        ["2026-04-03", "03/04/26"],
        [46118, null],
      ],
    ])
      expect(readCalendar(closed, null)).toEqual(expected);
    expect(readCalendar([["Date", "Holiday"]], null)).toEqual({ ok: true, value: calendarOf(MONDAY_TO_FRIDAY) });
  });

  it("takes nothing for a heading that has a date beside it, holds a figure or stands alone", () => {
    expect(sentence([["Good Friday", 46115]], null)).toContain('closed, row 1: "Good Friday"');
    expect(sentence([["31 Feb 2026"], [46115]], null)).toContain('closed, row 1: "31 Feb 2026"');
    expect(sentence([["tbc"]], null)).toContain('closed, row 1: "tbc"');
    expect(sentence([["Date"], [46115], ["tbc"]], null)).toContain('closed, row 3: "tbc"');
  });

  it("names the row of a closed day that is no date", () => {
    expect(sentence([[46115], ["Good Friday"]], null)).toBe(
      'closed, row 2: "Good Friday" is not a date; type it like 2026-03-05 or 5 Mar 2026.',
    );
    expect(sentence([[-4]], null)).toContain('closed, row 1: "-4"');
    expect(sentence([["03/04/26"]], null)).toContain("closed, row 1");
    expect(sentence([[{ error: "#N/A" }]], null)).toBe("closed, row 1 holds the error #N/A; mend that cell first.");
    expect(sentence("tbc", null)).toContain('closed: "tbc"');
  });

  it("reads a weekend number as a code and a weekend text as a pattern", () => {
    expect(readCalendar(null, 11)).toEqual({ ok: true, value: calendarOf(0b1000000) });
    expect(readCalendar(null, "0000001")).toEqual({ ok: true, value: calendarOf(0b1000000) });
    expect(readCalendar(null, "1111111")).toEqual({ ok: true, value: calendarOf(0b1111111) });
    expect(readCalendar(null, "0000000")).toEqual({ ok: true, value: calendarOf(0) });
    for (const weekend of ["11", "1", 8, 1.5, -1, 1111111, "Sunday", true])
      expect(sentence(null, weekend)).toMatch(
        /^weekend: ".*" cannot be used; give a code 1 to 7 or 11 to 17 as a number/,
      );
  });

  it("agrees with calendarOf for any list of days", () => {
    const cell = fc.oneof(fc.integer({ min: 1, max: 60000 }), fc.constantFrom(null, 0, ""));
    fc.assert(
      fc.property(fc.array(cell, { maxLength: 40 }), fc.integer({ min: 0, max: 127 }), (cells, weekend) => {
        const pattern = [...Array(7).keys()].map((day) => (weekend >> day) & 1).join("");
        const days = cells.filter((day): day is number => typeof day === "number" && day > 0);
        expect(
          readCalendar(
            cells.map((day) => [day]),
            pattern,
          ),
        ).toEqual({ ok: true, value: calendarOf(weekend, days) });
      }),
    );
  });
});
