import { days, places } from "../../shared/holidays.json";
import type { HolidayPlace } from "../domain/dates/holidayPlace";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { nameKey } from "./nameKey";
import { readText } from "./readText";

const DAYS: Readonly<Record<string, string>> = days;

/** The place whose public holidays are meant, by name or code; case, accents, spaces and punctuation aside. Blank (also 0) is null. Problems: argument-not-usable, which lists the places; error-in-cell. */
export function readHolidayPlace(raw: unknown, argument: string): Outcome<HolidayPlace | null> {
  const text = raw === 0 ? succeed(null) : readText(raw, argument);
  if (!text.ok) return text;
  if (text.value === null) return succeed(null);
  const key = nameKey(text.value);
  const place = places.find(({ names }) => names.split("|").some((name) => nameKey(name) === key));
  if (place !== undefined) {
    const { firstYear, lastYear, lists } = place;
    const listed = lists.split(" ").map((list) => DAYS[list]!);
    return succeed({ name: shownName(place), firstYear, lastYear, days: listed.join("|") });
  }
  const expected = places
    .map(shownName)
    .join(", ")
    .replace(/, ([^,]*)$/, " or $1");
  return fail("argument-not-usable", { argument, given: showGiven(text.value), expected });
}

function shownName({ names }: { readonly names: string }): string {
  return names.split("|")[0]!;
}
