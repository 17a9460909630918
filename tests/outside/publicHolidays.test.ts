import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { easterSunday } from "../../src/domain/dates/easterSunday";
import { isoFromSerial } from "../../src/domain/dates/isoFromSerial";
import { due } from "../../src/functions/bindings/due";
import { holidays } from "../../src/functions/bindings/holidays";
import published from "./publishedHolidays.json";
import { serialOf } from "./serialOf";

type Lists = Readonly<Record<string, string>>;

/** The days of a list, written out; a star behind a day of the UK's lists marks a substitute day. */
function daysOf(year: string, list: string): readonly string[] {
  return list.split(" ").map((day) => (day.length > 6 ? day : `${year}-${day}`).replace("*", ""));
}

function given(place: string, from: string, to: string): readonly (readonly [day: string, name: string])[] {
  const [, ...rows] = holidays(place as unknown, from as unknown, to as unknown) as [unknown, ...[number, string][]];
  return rows.map(([day, name]) => [isoFromSerial(day), name]);
}

/** All the days of consecutive published years against one answer for the whole span. */
function expectLists(place: string, lists: Lists, also: readonly string[] = []): void {
  const years = Object.keys(lists).sort();
  const expected = [...years.flatMap((year) => daysOf(year, lists[year]!)), ...also].sort();
  const [first, last] = [`${years[0]}-01-01`, `${years.at(-1)}-12-31`];
  expect(given(place, first, last).map(([day]) => day)).toEqual(expected);
}

const { unitedStates, unitedKingdom, france, ireland, milan, easter } = published;
const DIVISIONS: readonly (readonly [place: string, lists: Lists])[] = [
  ["England and Wales", unitedKingdom.divisions["england-and-wales"]],
  ["Scotland", unitedKingdom.divisions.scotland],
  ["Northern Ireland", unitedKingdom.divisions["northern-ireland"]],
];

describe("public holidays against published lists (publishedHolidays.json)", () => {
  test("federal holidays of the United States, 2018 to 2030, on the day observed", () => {
    expectLists("United States", { ...unitedStates.lists, ...unitedStates.furtherLists });
  });

  test.each(DIVISIONS)("bank holidays of %s, 2019 to 2028", (place, lists) => expectLists(place, lists));

  test.each(DIVISIONS)("substitute days of %s are named so, and no others", (place, lists) => {
    const starred = Object.entries(lists).flatMap(([year, list]) =>
      list
        .split(" ")
        .filter((day) => day.endsWith("*"))
        .map((day) => `${year}-${day.slice(0, -1)}`),
    );
    const named = given(place, "2019-01-01", "2028-12-31").filter(([, name]) => name.endsWith("(substitute day)"));
    expect(named.map(([day]) => day)).toEqual(starred);
  });

  test("public holidays of Ireland, 2023 to 2030", () => expectLists("Ireland", ireland.lists));

  test("public holidays of France, 2019 to 2027", () => expectLists("France", france.lists));

  test("public holidays of Milan, 2019 to 2030, with 4 October from 2026 on (Law 151/2025)", () => {
    expectLists(
      "Milan",
      milan.lists,
      [2026, 2027, 2028, 2029, 2030].map((year) => `${year}-10-04`),
    );
  });

  test("Easter Sunday, 1990 to 2050 and the extremes", () => {
    const sundays = easter.sundays.split(" ");
    expect(sundays.map((sunday) => isoFromSerial(easterSunday(+sunday.slice(0, 4))!))).toEqual(sundays);
    // The earliest and the latest day Easter can fall on, computed for the reference list.
    expect([2285, 2038].map((year) => isoFromSerial(easterSunday(year)!))).toEqual(["2285-03-22", "2038-04-25"]);
  });
});

test("the days that are easily got wrong", () => {
  expect(given("US", "2027-12-01", "2028-01-31")).toEqual([
    ["2027-12-24", "Christmas Day (observed)"],
    ["2027-12-31", "New Year's Day (observed)"],
    ["2028-01-17", "Birthday of Martin Luther King, Jr."],
  ]);
  expect(given("UK-ENG", "2027-12-01", "2027-12-31")).toEqual([
    ["2027-12-27", "Christmas Day (substitute day)"],
    ["2027-12-28", "Boxing Day (substitute day)"],
  ]);
  expect(given("Scotland", "2026-06-01", "2026-06-30")).toEqual([["2026-06-15", "World Cup bank holiday"]]);
  expect(given("England and Wales", "2026-06-01", "2026-06-30")).toEqual([]);
});

test("a due date counts on without the holidays of the lender's place, given as they come", () => {
  // GOV.UK: Good Friday 3 April and Easter Monday 6 April 2026; in Scotland Easter Monday is no bank holiday.
  const dueIn = (place: string) =>
    due(serialOf("2026-04-01"), "3 working days", null, holidays(place as unknown, "2026-01-01", "2026-12-31"));
  expect(isoFromSerial(dueIn("England and Wales") as number)).toBe("2026-04-08");
  expect(isoFromSerial(dueIn("Scotland") as number)).toBe("2026-04-07");
});

const reference = resolve(__dirname, "../../../shared/reference");
(existsSync(reference) ? test : test.skip)(
  "restates every day of the reference folder (skipped where that folder is absent)",
  () => {
    interface Day {
      date: string;
    }
    const read = (file: string): unknown => JSON.parse(readFileSync(resolve(reference, file), "utf8"));
    const us = read("holidays_us_federal.json") as { years: Record<string, Day[]> };
    const uk = read("holidays_uk_bank.json") as { divisions: Record<string, Record<string, Day[]>> };
    const sundays = read("easter.json") as { western: string[] };
    const restated = (lists: Lists) =>
      Object.fromEntries(Object.entries(lists).map(([year, list]) => [year, daysOf(year, list)]));
    const datesOf = (years: Record<string, Day[]>) =>
      Object.fromEntries(Object.entries(years).map(([year, days]) => [year, days.map(({ date }) => date)]));
    expect(restated(unitedStates.lists)).toEqual(datesOf(us.years));
    for (const [division, lists] of Object.entries(unitedKingdom.divisions))
      expect(restated(lists)).toEqual(datesOf(uk.divisions[division]!));
    expect(easter.sundays.split(" ")).toEqual(sundays.western);
  },
);
