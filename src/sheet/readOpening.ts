import { fail } from "../domain/fail";
import type { OpeningSpan } from "../domain/loans/openingSpan";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";
import { readTimeOfDay } from "./readTimeOfDay";

const EXPECTED = 'times such as 10:00, or spans such as "10-13, 14-18"';
const AND = /\s*(?:[,;/&+]|\band\b|\bund\b|\bet\b|\by\b|\be\b)\s*/i;
const TO = /\s*(?:[-–—]|\bto\b|\btill?\b|\buntil\b|\bbis\b|\s(?:à|a|alle|hasta)\s)\s*/i;
const FROM = /^(?:from|de|du|von|dalle|desde)\s/i;
const ALWAYS = /^(?:24\s?(?:h|hrs?|hours|\/\s?7)|all day|any ?time|always)$/i;
/** A time that says neither its half of the day nor, by a leading zero or by more than twelve hours, that it has none. */
const CLOCK_FACE = /^(?:[1-9]|1[0-2])(?:[.:]\d\d)?$/;
const HALF_DAY = 1 / 2;
/** No door opens before six unless it says so. */
const EARLIEST = 6 / 24;

/**
 * When a door is open, from its Open and Close cells.
 *
 * A time each ("10:00" and "18:00"); lists of equal length ("10, 14" and "13, 18"); or spans in Open alone ("10-13, 14-18",
 * "9am to 6pm", "2-6pm"), Close then blank. Bare hours are read in lists and spans, and as on a clock face: "9-6" is open until 18:00,
 * "2-6" from 14:00. Any other Close before Open ends after midnight. "24 h" is always. With one cell blank the day begins at 00:00 or ends at 24:00. Both blank is null. Problems: argument-not-usable, error-in-cell.
 */
export function readOpening(
  open: unknown,
  close: unknown,
  openArgument: string,
  closeArgument: string,
): Outcome<readonly OpeningSpan[] | null> {
  const opens = readScalar(open, openArgument);
  if (!opens.ok) return opens;
  const closes = readScalar(close, closeArgument);
  if (!closes.ok) return closes;
  if (opens.value === null && closes.value === null) return succeed(null);
  const refuse = (argument: string, given: number | string | boolean): Outcome<never> =>
    fail("argument-not-usable", { argument, given: showGiven(given), expected: EXPECTED });

  const spans = closes.value === null && typeof opens.value === "string" ? spansFromText(opens.value) : null;
  if (spans !== null) return succeed(spans);
  const from = opens.value === null ? [0] : timesFrom(opens.value);
  if (from === null) return refuse(openArgument, opens.value ?? "");
  const until = closes.value === null ? from.map(() => 1) : timesFrom(closes.value);
  if (until === null || (until.length !== from.length && opens.value !== null))
    return refuse(closeArgument, closes.value ?? "");
  const openWords = wordsOf(opens.value);
  const closeWords = wordsOf(closes.value);
  return succeed(
    from.map((start, index) => spanOf(start, until[index] ?? 1, openWords[index] ?? "", closeWords[index] ?? "")),
  );
}

function spansFromText(text: string): readonly OpeningSpan[] | null {
  if (ALWAYS.test(text.trim())) return [{ from: 0, until: 1 }];
  const spans: OpeningSpan[] = [];
  for (const part of text.trim().split(AND)) {
    const [first, last, ...more] = part.replace(FROM, "").split(TO);
    if (first === undefined || last === undefined || more.length > 0) return null;
    const until = timeFromWord(last);
    // In "2-6pm" the half of the day is said once.
    const half = /[ap]\.?\s?m\.?$/i.exec(last)?.[0] ?? "";
    const shared = half !== "" && /^[\d.:]+$/.test(first) ? timeFromWord(first + half) : null;
    const from = shared !== null && until !== null && shared < until ? shared : timeFromWord(first);
    if (from === null || until === null) return null;
    spans.push(spanOf(from, until, shared === null ? first : last, last));
  }
  return spans;
}

function timesFrom(value: number | string | boolean): readonly number[] | null {
  const times = wordsOf(value).map(timeFromWord);
  return times.every((time) => time !== null) ? (times as number[]) : null;
}

function wordsOf(value: number | string | boolean | null): readonly (number | string | boolean)[] {
  return value === null ? [] : typeof value === "string" ? value.trim().split(AND) : [value];
}

function timeFromWord(word: number | string | boolean): number | null {
  if (typeof word === "string" && /^(?:\d|1\d|2[0-4])$/.test(word)) return Number(word) / 24;
  const time = readTimeOfDay(word, "");
  return time.ok ? time.value : null;
}

/** What one word leaves open is taken so that the door is open by day. */
function spanOf(from: number, until: number, first: unknown, last: unknown): OpeningSpan {
  const isFace = (word: unknown): boolean => CLOCK_FACE.test(String(word));
  const isEarly = from < EARLIEST && until <= HALF_DAY && isFace(first) && isFace(last);
  const start = isEarly ? from + HALF_DAY : from;
  const end = until <= start && until + HALF_DAY > start && isFace(last) ? until + HALF_DAY : until;
  return { from: start, until: end < start ? end + 1 : end };
}
