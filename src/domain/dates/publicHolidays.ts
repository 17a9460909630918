import { moves } from "../../../shared/holidays.json";
import { fail } from "../fail";
import type { Outcome } from "../outcome";
import type { ResultTable } from "../resultTable";
import { succeed } from "../succeed";
import { daysInMonth } from "./daysInMonth";
import { easterSunday } from "./easterSunday";
import type { HolidayPlace } from "./holidayPlace";
import { isoFromSerial } from "./isoFromSerial";
import { serialFromYmd } from "./serialFromYmd";
import { weekdayFromSerial } from "./weekdayFromSerial";
import { ymdFromSerial } from "./ymdFromSerial";

const MOVES: Readonly<Record<string, string>> = moves;

/** What stands before a name: Easter and days, or a year and month and day, or a month with a day or the nth of a weekday; then a move, and in which years. */
const WHEN =
  /^(?:e(?<easter>[+-]\d+)|(?:(?<once>\d{4})-)?(?<month>\d+)(?:-(?<day>\d+)(?<move>[a-z])?|\/(?<weekday>\d)\.(?<nth>-?\d)))(?:!(?<not>\d{4}))?(?:>(?<since>\d{4}))? (?<name>.+)$/;

/**
 * The public holidays of a place from one day to another, both counted, by date: the day on which each is observed, and its name.
 *
 * Problems: argument-not-usable where `to` is before `from`, and where either is in a year for which the days of the
 * place are not known.
 */
export function publicHolidays(place: HolidayPlace, from: number, to: number): Outcome<ResultTable> {
  const { name, firstYear, lastYear } = place;
  const years: number[] = [];
  for (const [argument, day] of [
    ["from", from],
    ["to", to],
  ] as const) {
    const { year } = ymdFromSerial(day);
    years.push(year);
    const isKnown = year >= firstYear && year <= lastYear;
    if (isKnown && day >= from) continue;
    const expected = isKnown
      ? `a day from ${isoFromSerial(from)} on`
      : `a day of ${firstYear} to ${lastYear}, the years for which the holidays of ${name} are known`;
    return fail("argument-not-usable", { argument, given: isoFromSerial(day), expected });
  }
  const rules = place.days.split("|").map((rule) => WHEN.exec(rule)!.groups!);
  const found: [day: number, name: string][] = [];
  // New Year's Day may be observed on the last day of the year before.
  for (let year = years[0]!; year <= years[1]! + 1; year++) {
    for (const rule of rules) {
      const holiday = holidayIn(year, rule);
      if (holiday !== null && holiday[0] >= from && holiday[0] <= to) found.push(holiday);
    }
  }
  found.sort(([one], [other]) => one - other);
  return succeed({ headings: ["Date", "Holiday"], formats: ["date", "as is"], rows: found });
}

type Rule = Readonly<Record<string, string | undefined>>;

function holidayIn(year: number, rule: Rule): [day: number, name: string] | null {
  const { easter, once, month, day, move, weekday, nth, not, since, name } = rule;
  if (+(once ?? year) !== year || +(not ?? 0) === year || year < +(since ?? 0)) return null;
  if (easter !== undefined) return [easterSunday(year)! + +easter, name!];
  if (weekday !== undefined) return [nthWeekday(year, +month!, +weekday, +nth!), name!];
  const date = serialFromYmd(year, +month!, +day!)!;
  const shift =
    move === undefined ? null : new RegExp(`${weekdayFromSerial(date)}([+-]\\d).*? (\\D+)$`).exec(MOVES[move]!);
  return shift === null ? [date, name!] : [date + +shift[1]!, `${name} (${shift[2]})`];
}

/** The nth of a weekday in a month, from its end where below 0. */
function nthWeekday(year: number, month: number, weekday: number, nth: number): number {
  const day = nth > 0 ? 7 * nth - 6 : daysInMonth(year, month) - 6 + 7 * (nth + 1);
  const start = serialFromYmd(year, month, day)!;
  return start + ((weekday - weekdayFromSerial(start) + 7) % 7);
}
