import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { showGiven } from "../showGiven";
import { succeed } from "../succeed";
import { isoFromSerial } from "./isoFromSerial";
import { monthFromName } from "./monthFromName";
import { serialFromYmd } from "./serialFromYmd";
import { weekdaysFromName } from "./weekdaysFromName";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
const ISO = /^(\d{4})-(\d{2})-(\d{2})$/;
const FIGURES = /^(\d{1,4})[-/. ]+(\d{1,2})[-/. ]+(\d{1,4})\.?$/;
const TIME_AT_END = /[ t,]+(\d{1,2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?(?: ?([ap])\.?m\.?)?$/;
// "the 5th of March", "5 de marzo de 2026", "1er mars", "1º marzo", "am 5. März"
const FILLERS = new Set(["the", "of", "de", "del", "den", "le", "il", "el", "di"]);
const ORDINAL_ENDINGS = new Set(["st", "nd", "rd", "th", "er", "re", "e", "eme", "o", "a", "º", "°", "ª"]);

/**
 * The day a text names, as a serial day, with the time of day as its fraction where one follows.
 *
 * Read: ISO (2026-03-05) and any form with the month's name in English, French, Spanish, Italian or German
 * ("5 Mar 2026", "Mar 5, 2026", "Thu 5th March 2026", "5. März 2026", "5-Mar-26"). With a named month the day stands before
 * the year; years of two figures are 2000 to 2099. Figures alone are refused: date-ambiguous with both days, or
 * date-figures-only with the one day they can be. A weekday that contradicts the date is refused.
 */
export function dateFromText(text: string, argument: string): Outcome<number> {
  const plain = text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/\s+/g, " ")
    .trim();
  const time = TIME_AT_END.exec(plain);
  const fraction = time === null ? 0 : dayFraction(time);
  const dayText = time === null ? plain : plain.slice(0, time.index);
  const given = showGiven(text);
  if (fraction === null) return fail("date-not-understood", { argument, given });

  const iso = ISO.exec(dayText);
  const figures = iso === null ? FIGURES.exec(dayText) : null;
  if (figures !== null) return refuseFigures(figures, argument, given);
  const named =
    iso === null ? readNamedMonth(dayText) : { year: +iso[1]!, month: +iso[2]!, day: +iso[3]!, weekdays: [] };
  const serial = named === null ? null : serialFromYmd(named.year, named.month, named.day);
  if (named === null || serial === null) return fail("date-not-understood", { argument, given });
  const weekday = (serial + 5) % 7;
  if (named.weekdays.length > 0 && !named.weekdays.includes(weekday)) {
    const expected = `the date alone, or with its own weekday (${isoFromSerial(serial)} is a ${WEEKDAYS[weekday]})`;
    return fail("argument-not-usable", { argument, given, expected });
  }
  return succeed(serial + fraction);
}

interface NamedDay {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly weekdays: readonly number[];
}

function readNamedMonth(plain: string): NamedDay | null {
  const parts = plain.match(/\d+|[a-zº°ª]+|[^\s\da-zº°ª.,()/-]/g) ?? [];
  const numbers: string[] = [];
  const words: string[] = [];
  let month: number | null = null;
  parts.forEach((part, index) => {
    const isNumber = /^\d/.test(part);
    if (isNumber) numbers.push(part);
    else if (index > 0 && /^\d/.test(parts[index - 1]!) && ORDINAL_ENDINGS.has(part)) return;
    else if (!FILLERS.has(part) || (part === "di" && index === 0)) words.push(part);
  });
  // "Mar 5 mars 2026": where two words stand, the one that can only be the month is the month.
  const [first, second] = words;
  if (first === undefined || words.length > 2 || numbers.length !== 2) return null;
  let weekdays: readonly number[] = [];
  if (second === undefined) month = monthFromName(first);
  else if (weekdaysFromName(first).length > 0 && monthFromName(second) !== null) {
    month = monthFromName(second);
    weekdays = weekdaysFromName(first);
  } else {
    month = monthFromName(first);
    weekdays = weekdaysFromName(second);
    if (weekdays.length === 0) return null;
  }
  if (month === null) return null;
  const [one, two] = numbers as [string, string];
  const yearFirst = one.length === 4;
  const dayText = yearFirst ? two : one;
  const yearText = yearFirst ? one : two;
  if (dayText.length > 2 || (yearText.length !== 4 && yearText.length !== 2)) return null;
  return { year: yearText.length === 2 ? 2000 + +yearText : +yearText, month, day: +dayText, weekdays };
}

/** Figures alone say no order of day and month, so both readings are named; none is chosen. */
function refuseFigures(figures: RegExpExecArray, argument: string, given: string): Outcome<never> {
  const [, one, two, three] = figures as unknown as [string, string, string, string];
  const readings: number[] = [];
  const add = (year: string, month: string, day: string) => {
    if (year.length === 3 || year.length === 1 || month.length > 2 || day.length > 2) return;
    const serial = serialFromYmd(year.length === 2 ? 2000 + +year : +year, +month, +day);
    if (serial !== null && !readings.includes(serial)) readings.push(serial);
  };
  if (one.length > 2) add(one, two, three);
  else {
    add(three, two, one);
    add(three, one, two);
  }
  const [first, second] = readings;
  if (first === undefined) return fail("date-not-understood", { argument, given });
  if (second === undefined) return fail("date-figures-only", { argument, given, only: isoFromSerial(first) });
  return fail("date-ambiguous", { argument, given, first: isoFromSerial(first), second: isoFromSerial(second) });
}

function dayFraction(time: RegExpExecArray): number | null {
  const half = time[4];
  let hour = +time[1]!;
  const minute = +time[2]!;
  const second = +(time[3] ?? 0);
  if (minute > 59 || second > 59 || hour > 23 || (half !== undefined && (hour < 1 || hour > 12))) return null;
  if (half !== undefined) hour = (hour % 12) + (half === "p" ? 12 : 0);
  return (hour * 3600 + minute * 60 + second) / 86400;
}
