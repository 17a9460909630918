import { fail } from "../../fail";
import type { Outcome } from "../../outcome";
import { showGiven } from "../../showGiven";
import { termForms } from "./termForms";
import { termTokens, type TokenPlaces, type TermTokens } from "./termTokens";
import { unreadPart } from "./unreadPart";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/** Why a phrase that takes none of the forms is no terms, said as exactly as it can be: blank, two readings, or the part not understood. */
export function refuseTerms(
  text: string,
  { symbols, values }: TermTokens,
  given: string,
  argument: string,
): Outcome<never> {
  if (text.trim() === "")
    return fail("argument-missing", { argument, expected: 'terms such as "7 days" or "3 working days"' });
  const shown = showGiven(given);
  if (termForms.eitherWeekday.test(symbols)) {
    const name = WEEKDAYS[values[symbols.indexOf("F")]!]!;
    const readings = { first: `the first ${name} after`, second: `the ${name} of the week after` };
    return fail("terms-ambiguous", { argument, given: shown, ...readings });
  }
  const places: TokenPlaces = { starts: [], ends: [] };
  termTokens(text, places);
  const figuresAt = symbols.includes("?") ? -1 : symbols.indexOf("f");
  const figures = figuresAt < 0 ? "" : text.slice(places.starts[figuresAt], places.ends[figuresAt]);
  const range = /^(\d{1,3})[-/](\d{1,3})$/.exec(figures);
  if (range !== null) {
    const reading = (number: string): string => showGiven(text.replace(figures, number));
    return fail("terms-ambiguous", { argument, given: shown, first: reading(range[1]!), second: reading(range[2]!) });
  }
  const part = figures || unreadPart(text, symbols, places);
  return fail("terms-not-understood", { argument, given: shown, part: showGiven(part) });
}
