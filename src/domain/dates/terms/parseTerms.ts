import { fail } from "../../fail";
import type { Outcome } from "../../outcome";
import { showGiven } from "../../showGiven";
import { succeed } from "../../succeed";
import { dateFromText } from "../dateFromText";
import { plainSpan } from "./plainSpan";
import { plainTerms } from "./plainTerms";
import { refuseTerms } from "./refuseTerms";
import { termForms } from "./termForms";
import type { Terms, TermsAnchor } from "./terms";
import { termTokens, type TermTokens } from "./termTokens";

/** Ten years: a longer loan is a slip of the keyboard, or a date that stands as a number. */
const MOST_DAYS = 3650;
/** A larger number alone may be a year: it takes the word "days" to be a span. */
const MOST_ALONE = 999;

const THREE_FIGURES = /\d[-/.]\d+[-/.]\d+$/;

/**
 * Return terms, read from what a lender writes in English, French, Spanish, Italian or German, or from a number of calendar
 * days.
 *
 * Spans count from the day out unless they say "after shoot" (wrap) or "from receipt" (purchase). Weeks are 7 days, a
 * fortnight 14, hours must make whole days. Working days are those of the calendar they will be counted on, also where the
 * word ("ouvrables", "feriali", "Werktage") may count Saturday in law. A weekday is the first one after the anchor.
 *
 * Problems: terms-not-understood with the part that is not; terms-ambiguous with two readings ("7-10 days", "next Friday");
 * argument-missing for blank text; argument-not-usable for spans that are not whole days or are over 3650, and for
 * numbers alone from 1000 on; those of dateFromText.
 */
export function parseTerms(given: string | number, argument = "terms"): Outcome<Terms> {
  if (typeof given === "number") return bareNumber(given, given, argument);
  const span = plainSpan(given);
  if (span !== null) return succeed(span);
  const text = plainTerms(given);
  const tokens = termTokens(text);
  const { symbols } = tokens;
  if (termForms.span.test(symbols)) return readSpan(tokens, given, argument);
  if (symbols === "n" && /^[^a-z]*$/.test(text)) return bareNumber(tokens.values[0]!, given, argument);
  if (termForms.sameDay.test(symbols)) return succeed({ kind: "days", count: 0, from: anchorIn(symbols) });
  if (termForms.weekday.test(symbols) && isFirst(tokens))
    return succeed({ kind: "weekday", weekday: tokens.values[symbols.indexOf("F")]!, from: anchorIn(symbols) });
  if (termForms.monthEnd.test(symbols)) return succeed({ kind: "month end", monthsOn: 0 });
  if (termForms.nextMonthEnd.test(symbols)) return succeed({ kind: "month end", monthsOn: 1 });
  return readDay(text, symbols, given, argument) ?? refuseTerms(text, tokens, given, argument);
}

/** "the Monday" or "the first Monday", not "the second". */
function isFirst({ symbols, values }: TermTokens): boolean {
  const ordinalAt = symbols.indexOf("o");
  return ordinalAt < 0 || values[ordinalAt] === 1;
}

function anchorIn(symbols: string): TermsAnchor {
  return symbols.includes("S") ? "shoot" : symbols.includes("R") ? "receipt" : "out";
}

function readSpan({ symbols, values }: TermTokens, given: string, argument: string): Outcome<Terms> {
  const numberAt = symbols.search(/[no]/);
  const count = numberAt < 0 ? 1 : values[numberAt]!;
  const from = anchorIn(symbols);
  if (/[WBb]/.test(symbols)) return spanOfDays("working days", count, from, given, argument);
  if (symbols.includes("K")) return spanOfDays("days", count * 7, from, given, argument);
  if (symbols.includes("Z")) return spanOfDays("days", count * 14, from, given, argument);
  if (symbols.includes("H")) return spanOfDays("days", count / 24, from, given, argument);
  if (symbols.includes("M")) return spanOfDays("months", count, from, given, argument);
  return spanOfDays("days", count, from, given, argument);
}

function bareNumber(count: number, given: string | number, argument: string): Outcome<Terms> {
  return spanOfDays("days", count, "out", given, argument, MOST_ALONE);
}

function spanOfDays(
  kind: "days" | "working days" | "months",
  count: number,
  from: TermsAnchor,
  given: string | number,
  argument: string,
  most = MOST_DAYS,
): Outcome<Terms> {
  const days = kind === "months" ? count * 30 : count;
  if (Number.isInteger(count) && count >= 0 && days <= most)
    return succeed({ kind: count === 0 ? "days" : kind, count, from });
  const expected = `a whole number of days, 0 to ${MOST_DAYS} (with the word "days" from ${MOST_ALONE + 1} on), or a day as text such as "by 2026-03-05"`;
  return fail("argument-not-usable", { argument, given: showGiven(given), expected });
}

/** A fixed day, the problem of a day that reads two ways or is none, or null for a phrase that names no day. */
function readDay(text: string, symbols: string, given: string, argument: string): Outcome<Terms> | null {
  if (!termForms.date.test(symbols)) return null;
  const places = { starts: [], ends: [] };
  termTokens(text, places);
  const part = text.slice(places.starts[symbols.search(/[^IP]/)], places.ends[symbols.length - 1]);
  if (!symbols.includes("N") && !THREE_FIGURES.test(part)) return null;
  const day = dateFromText(part, argument);
  if (day.ok) return succeed({ kind: "date", day: Math.floor(day.value) });
  if (day.problem.reason !== "date-not-understood") return day;
  return fail("terms-not-understood", { argument, given: showGiven(given), part: showGiven(part) });
}
