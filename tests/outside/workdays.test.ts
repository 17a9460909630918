import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import * as formulas from "@formulajs/formulajs";
import fc from "fast-check";
import { calendarOf } from "../../src/domain/dates/calendarOf";
import { closedWeekdaysFromCode } from "../../src/domain/dates/closedWeekdaysFromCode";
import { closedWeekdaysFromPattern } from "../../src/domain/dates/closedWeekdaysFromPattern";
import type { WorkingCalendar } from "../../src/domain/dates/workingCalendar";
import { workdayOffset } from "../../src/domain/dates/workdayOffset";
import { workdaysBetween } from "../../src/domain/dates/workdaysBetween";
import published from "./publishedWorkdays.json";
import { serialOf } from "./serialOf";
import computed from "./workdayVectors.json";

type Vector = [
  name: string,
  start: string,
  daysOrEnd: number | string,
  weekend: number | string | null,
  holidays: string,
  result: number,
];

const vectors = computed.vectors as unknown as Vector[];
const holidayLists = computed.holidayLists as Readonly<Record<string, readonly string[]>>;

function calendarFor(weekend: number | string | null | undefined, holidays: readonly string[]): WorkingCalendar | null {
  const closedWeekdays =
    typeof weekend === "string" ? closedWeekdaysFromPattern(weekend) : closedWeekdaysFromCode(weekend ?? 1);
  return closedWeekdays === null ? null : calendarOf(closedWeekdays, holidays.map(serialOf));
}

describe("working days against LibreOffice Calc 7.4.7 (workdayVectors.json)", () => {
  it.each(vectors)(
    "%s from %s, %s, weekend %s, holidays %s is %i",
    (name, start, daysOrEnd, weekend, holidays, result) => {
      const calendar = calendarFor(weekend, holidayLists[holidays]!)!;
      const found =
        typeof daysOrEnd === "number"
          ? workdayOffset(serialOf(start), daysOrEnd, calendar)
          : workdaysBetween(serialOf(start), serialOf(daysOrEnd), calendar);
      expect(name.startsWith("WORKDAY")).toBe(typeof daysOrEnd === "number");
      expect(found).toBe(result);
    },
  );

  const reference = resolve(__dirname, "../../../shared/reference/workday_vectors.json");
  (existsSync(reference) ? it : it.skip)(
    "restates every vector of the reference folder (skipped where that folder is absent)",
    () => {
      interface Given {
        fn: string;
        start: string;
        days?: number;
        end?: string;
        weekend?: number | string;
        holidays: string;
        result: number;
      }
      const given = (JSON.parse(readFileSync(reference, "utf8")) as { vectors: Given[] }).vectors;
      expect(vectors).toEqual(
        given.map((v) => [v.fn, v.start, v.days ?? v.end, v.weekend ?? null, v.holidays, v.result]),
      );
    },
  );
});

describe("working days against published examples (publishedWorkdays.json)", () => {
  it.each(published.examples.map((example) => [`${example.f} ${example.start}`, example] as const))(
    "%s",
    (_title, example) => {
      const calendar = calendarFor(example.weekend, example.holidays);
      if (example.result === "#NUM!") return expect(calendar).toBeNull();
      const expected = typeof example.result === "string" ? serialOf(example.result) : example.result;
      const start = serialOf(example.start);
      const found =
        example.days === undefined
          ? workdaysBetween(start, serialOf(example.end!), calendar!)
          : workdayOffset(start, example.days, calendar!);
      expect(found).toBe(expected);
    },
  );

  it("gives the date itself for 0 days, whatever day it is (OpenFormula 6.10.22)", () => {
    expect(workdayOffset(serialOf("2026-03-07"), 0, calendarFor(1, ["2026-03-07"])!)).toBe(serialOf("2026-03-07"));
  });
});

describe("working days against the library @formulajs/formulajs 4.6.1", () => {
  const someDay = fc.integer({ min: serialOf("2020-01-01"), max: serialOf("2030-12-31") });
  const someHolidays = fc.array(someDay, { maxLength: 30 });
  const dateOf = (serial: number): Date => {
    const utc = new Date((serial - 25569) * 86_400_000);
    // The library works in local time.
    return new Date(utc.getUTCFullYear(), utc.getUTCMonth(), utc.getUTCDate());
  };
  const serialOfDate = (date: Date): number =>
    Math.round(Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) / 86_400_000) + 25569;

  it("agrees on WORKDAY.INTL forwards for every weekend code", () => {
    const code = fc.constantFrom(1, 2, 3, 4, 5, 6, 7, 11, 12, 13, 14, 15, 16, 17);
    fc.assert(
      fc.property(someDay, fc.integer({ min: 1, max: 60 }), code, someHolidays, (start, days, weekend, holidays) => {
        const found = formulas.WORKDAY.INTL(dateOf(start), days, weekend, holidays.map(dateOf)) as unknown as Date;
        expect(workdayOffset(start, days, calendarOf(closedWeekdaysFromCode(weekend)!, holidays))).toBe(
          serialOfDate(found),
        );
      }),
      { numRuns: 300 },
    );
  });

  // Its NETWORKDAYS with the days turned round is wrong, so only spans in order are compared.
  it("agrees on NETWORKDAYS for spans in order", () => {
    fc.assert(
      fc.property(someDay, fc.integer({ min: 0, max: 200 }), someHolidays, (start, length, holidays) => {
        const found = formulas.NETWORKDAYS(
          dateOf(start),
          dateOf(start + length),
          holidays.map(dateOf),
        ) as unknown as number;
        expect(workdaysBetween(start, start + length, calendarOf(0b1100000, holidays))).toBe(found);
      }),
      { numRuns: 300 },
    );
  });
});
