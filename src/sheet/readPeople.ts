import type { Crew } from "../domain/day/crew";
import { smallestCrew } from "../domain/day/smallestCrew";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { peopleFieldOf, type PeopleField } from "./peopleFieldOf";
import { readHours } from "./readHours";
import { readMinutes } from "./readMinutes";
import { readNumber } from "./readNumber";
import { readScalar } from "./readScalar";

const LABELS_EXPECTED =
  '"dressers", "chairs", "cameras", "meal after hours", "meal minutes", "crossing minutes" or "hand-over minutes"';

/**
 * The crew from two columns, what and how many, rows in any order; null (the argument left out) is the smallest crew.
 *
 * A first row of headings ("What", "How many") and blank rows are passed over; a blank figure counts as left out.
 * Problems: argument-not-usable for one column alone, for a label that is not known or stands twice, a count that is no whole number,
 * hours below 1 ("type 6, not 6:00") and minutes as readMinutes says; argument-missing where a meal has only
 * its hours or only its minutes; error-in-cell.
 */
export function readPeople(cells: readonly (readonly unknown[])[] | null): Outcome<Crew> {
  if (cells?.[0]?.length === 1) {
    const expected = "two columns, what and how many";
    return fail("argument-not-usable", { argument: "people", given: "one column", expected });
  }
  const figures = new Map<PeopleField, number | null>();
  for (const [row, pair] of (cells ?? []).entries()) {
    const label = readScalar(pair[0], `people, row ${row + 1}`);
    const howMany = readScalar(pair[1], `people, row ${row + 1}`);
    if (!label.ok) return label;
    if (!howMany.ok) return howMany;
    // A blank cell reaches some hosts as 0.
    if (!label.value && !howMany.value) continue;
    const shown = showGiven(label.value ?? "");
    const field = peopleFieldOf(shown);
    if (field === undefined) {
      const isHeadings =
        row === 0 && typeof label.value === "string" && typeof howMany.value === "string" && !/\d/.test(howMany.value);
      if (isHeadings) continue;
      return fail("argument-not-usable", { argument: "people", given: shown, expected: LABELS_EXPECTED });
    }
    if (figures.has(field)) {
      return fail("argument-not-usable", { argument: "people", given: shown, expected: "each of them once" });
    }
    const figure = readFigure(field, howMany.value, `people, ${shown}`);
    if (!figure.ok) return figure;
    figures.set(field, figure.value);
  }

  const afterHours = figures.get("mealAfterHours") || null;
  const mealMinutes = figures.get("mealMinutes") || null;
  if (afterHours === null && mealMinutes !== null) {
    return fail("argument-missing", {
      argument: "people, meal after hours",
      expected: "the hours from call, such as 6",
    });
  }
  if (afterHours !== null && mealMinutes === null) {
    return fail("argument-missing", { argument: "people, meal minutes", expected: "how long the meal is, such as 30" });
  }
  return succeed({
    dressers: figures.get("dressers") ?? smallestCrew.dressers,
    chairs: figures.get("chairs") ?? smallestCrew.chairs,
    cameras: figures.get("cameras") ?? smallestCrew.cameras,
    meal: afterHours === null || mealMinutes === null ? null : { afterHours, minutes: mealMinutes },
    crossingMinutes: figures.get("crossingMinutes") ?? smallestCrew.crossingMinutes,
    handOverMinutes: figures.get("handOverMinutes") ?? smallestCrew.handOverMinutes,
  });
}

function readFigure(field: PeopleField, raw: unknown, argument: string): Outcome<number | null> {
  if (field.endsWith("Minutes")) return readMinutes(raw, argument);
  if (field === "mealAfterHours") return readHours(raw, argument);
  const expected = "a whole number, 0 or more";
  const count = readNumber(raw, argument, expected);
  if (!count.ok || count.value === null || (Number.isSafeInteger(count.value) && count.value >= 0)) return count;
  return fail("argument-not-usable", { argument, given: showGiven(count.value), expected });
}
