import fc from "fast-check";
import { places } from "../../../shared/holidays.json";
import { publicHolidays } from "../../../src/domain/dates/publicHolidays";
import { serialFromYmd } from "../../../src/domain/dates/serialFromYmd";
import { weekdayFromSerial } from "../../../src/domain/dates/weekdayFromSerial";
import { sayProblem } from "../../../src/domain/wording";
import { readHolidayPlace } from "../../../src/sheet/readHolidayPlace";

function placeOf(name: string) {
  const place = readHolidayPlace(name, "country");
  if (!place.ok || place.value === null) throw new Error(`no place ${name}`);
  return place.value;
}

const all = places.map(({ names, firstYear, lastYear }) => ({ name: names.split("|")[0]!, firstYear, lastYear }));

function daysOf(name: string, from: number, to: number): readonly number[] {
  const listed = publicHolidays(placeOf(name), from, to);
  return listed.ok ? listed.value.rows.map(([day]) => day as number) : [];
}

test.each(all)(
  "$name: a span holds the days of its parts, in order, within its bounds",
  ({ name, firstYear, lastYear }) => {
    const first = serialFromYmd(firstYear, 1, 1)!;
    const last = serialFromYmd(lastYear, 12, 31)!;
    const whole = daysOf(name, first, last);
    expect([...whole].sort((a, b) => a - b)).toEqual(whole);
    const day = fc.integer({ min: first, max: last });
    fc.assert(
      fc.property(day, day, (one, other) => {
        const [from, to] = one < other ? [one, other] : [other, one];
        expect(daysOf(name, from, to)).toEqual(whole.filter((found) => found >= from && found <= to));
      }),
    );
  },
);

test.each(all.slice(0, 4))(
  "$name: no holiday of the US and the UK is on a Saturday or Sunday",
  ({ name, firstYear, lastYear }) => {
    const days = daysOf(name, serialFromYmd(firstYear, 1, 1)!, serialFromYmd(lastYear, 12, 31)!);
    expect(days.length).toBeGreaterThan(8 * (lastYear - firstYear));
    expect(days.filter((day) => weekdayFromSerial(day) > 4)).toEqual([]);
    expect(new Set(days).size).toBe(days.length);
  },
);

test.each([
  ["from", 2018, 2019, "2018-01-01"],
  ["to", 2028, 2029, "2029-01-01"],
])("a year in which the days are not known is a problem that says which are (%s)", (argument, from, to, given) => {
  const listed = publicHolidays(placeOf("Scotland"), serialFromYmd(from, 1, 1)!, serialFromYmd(to, 1, 1)!);
  expect(listed.ok ? "" : sayProblem(listed.problem)).toBe(
    `${argument}: "${given}" cannot be used; give a day of 2019 to 2028, the years for which the holidays of Scotland are known.`,
  );
});

test("a span that ends before it begins is a problem", () => {
  const listed = publicHolidays(placeOf("FR"), serialFromYmd(2026, 3, 5)!, serialFromYmd(2026, 3, 4)!);
  expect(listed.ok ? "" : sayProblem(listed.problem)).toBe(
    'to: "2026-03-04" cannot be used; give a day from 2026-03-05 on.',
  );
});
