import { fail } from "../../fail";
import type { Outcome } from "../../outcome";
import { showGiven } from "../../showGiven";
import { succeed } from "../../succeed";
import { dateFromText } from "../dateFromText";
import { plainTerms } from "./plainTerms";
import { termForms } from "./termForms";
import type { Terms } from "./terms";
import { termTokens, type TermTokens } from "./termTokens";
import { unreadPart } from "./unreadPart";

/** Ten years: a longer loan is a slip of the keyboard, or a date that stands as a number. */
const MOST_DAYS = 3650;
const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

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
 * argument-missing for blank text; argument-not-usable for spans that are not whole days or are over 3650; those of dateFromText.
 */
export function parseTerms(given: string | number, argument = "terms"): Outcome<Terms> {
  if (typeof given === "number") return spanOfDays("days", given, "out", given, argument);
  const text = plainTerms(given);
  const tokens = termTokens(text);
  const { symbols } = tokens;
  if (termForms.span.test(symbols)) return readSpan(tokens, given, argument);
  if (symbols === "n" && /^[^a-z]*$/.test(text)) return spanOfDays("days", tokens.values[0]!, "out", given, argument);
  if (termForms.sameDay.test(symbols)) return succeed({ kind: "days", count: 0, from: anchorIn(symbols) });
  if (termForms.weekday.test(symbols)) {
    const ordinal = symbols.indexOf("n");
    const weekdayAt = symbols.indexOf("F");
    if (ordinal < 0 || tokens.values[ordinal] === 1)
      return succeed({ kind: "weekday", weekday: tokens.values[weekdayAt]!, from: anchorIn(symbols) });
    const part = text.slice(tokens.starts[ordinal], tokens.ends[weekdayAt]);
    return fail("terms-not-understood", { argument, given: showGiven(given), part });
  }
  if (termForms.monthEnd.test(symbols)) return succeed({ kind: "month end", monthsOn: 0 });
  if (termForms.nextMonthEnd.test(symbols)) return succeed({ kind: "month end", monthsOn: 1 });
  if (termForms.date.test(symbols)) {
    const part = text.slice(tokens.starts[symbols.search(/[^IP]/)], tokens.ends[symbols.length - 1]);
    if (symbols.includes("N") || THREE_FIGURES.test(part)) return readDay(part, given, argument);
  }
  return refuse(tokens, text, given, argument);
}

function anchorIn(symbols: string): "out" | "shoot" | "receipt" {
  return symbols.includes("S") ? "shoot" : symbols.includes("R") ? "receipt" : "out";
}

function readSpan({ symbols, values }: TermTokens, given: string, argument: string): Outcome<Terms> {
  const numberAt = symbols.indexOf("n");
  const count = numberAt < 0 ? 1 : values[numberAt]!;
  const from = anchorIn(symbols);
  if (/[WBb]/.test(symbols)) return spanOfDays("working days", count, from, given, argument);
  if (symbols.includes("K")) return spanOfDays("days", count * 7, from, given, argument);
  if (symbols.includes("Z")) return spanOfDays("days", count * 14, from, given, argument);
  if (symbols.includes("H")) return spanOfDays("days", count / 24, from, given, argument);
  if (symbols.includes("M")) return spanOfDays("months", count, from, given, argument);
  return spanOfDays("days", count, from, given, argument);
}

function spanOfDays(
  kind: "days" | "working days" | "months",
  count: number,
  from: "out" | "shoot" | "receipt",
  given: string | number,
  argument: string,
): Outcome<Terms> {
  const days = kind === "months" ? count * 30 : count;
  if (Number.isInteger(count) && count >= 0 && days <= MOST_DAYS) return succeed({ kind: count === 0 ? "days" : kind, count, from });
  const expected = `a whole number of days, 0 to ${MOST_DAYS}, or a day as text such as "by 2026-03-05"`;
  return fail("argument-not-usable", { argument, given: showGiven(given), expected });
}

function readDay(part: string, given: string, argument: string): Outcome<Terms> {
  const day = dateFromText(part, argument);
  if (day.ok) return succeed({ kind: "date", day: Math.floor(day.value) });
  if (day.problem.reason !== "date-not-understood") return day;
  return fail("terms-not-understood", { argument, given: showGiven(given), part: showGiven(part) });
}

/** Why no form fits, said as exactly as it can be. */
function refuse(tokens: TermTokens, text: string, given: string, argument: string): Outcome<never> {
  const { symbols, values, starts, ends } = tokens;
  if (text.trim() === "") return fail("argument-missing", { argument, expected: 'terms such as "7 days" or "3 working days"' });
  const shown = showGiven(given);
  if (termForms.eitherWeekday.test(symbols)) {
    const name = WEEKDAYS[values[symbols.indexOf("F")]!]!;
    return fail("terms-ambiguous", { argument, given: shown, first: `the first ${name} after`, second: `the ${name} of the week after` });
  }
  const figuresAt = symbols.indexOf("f");
  if (figuresAt >= 0 && !symbols.includes("?")) {
    const figures = text.slice(starts[figuresAt], ends[figuresAt]);
    const range = /^(\d{1,3})[-/](\d{1,3})$/.exec(figures);
    if (range !== null) {
      const reading = (number: string) => showGiven(text.replace(figures, number));
      return fail("terms-ambiguous", { argument, given: shown, first: reading(range[1]!), second: reading(range[2]!) });
    }
    return fail("terms-not-understood", { argument, given: shown, part: figures });
  }
  return fail("terms-not-understood", { argument, given: shown, part: showGiven(unreadPart(text, tokens)) });
}
