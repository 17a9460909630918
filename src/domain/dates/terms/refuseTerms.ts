import { fail } from "../../fail";
import type { Outcome } from "../../outcome";
import { showGiven } from "../../showGiven";
import { eitherTerms } from "./eitherTerms";
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
  const either = eitherTerms(text);
  if (either !== null) {
    const [first, second] = either.map(showGiven) as [string, string];
    return fail("terms-ambiguous", { argument, given: shown, first, second });
  }
  const figuresAt = symbols.includes("?") ? -1 : symbols.indexOf("f");
  const figures = figuresAt < 0 ? "" : text.slice(places.starts[figuresAt], places.ends[figuresAt]);
  const unread = figures || unreadPart(text, symbols, places);
  // plainTerms writes "by" for whole phrases ("sale or return"), which were not typed so.
  const part = unread === "by" ? given : unread;
  return fail("terms-not-understood", { argument, given: shown, part: showGiven(part) });
}
