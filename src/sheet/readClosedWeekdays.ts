import { closedWeekdaysFromCode } from "../domain/dates/closedWeekdaysFromCode";
import { closedWeekdaysFromPattern } from "../domain/dates/closedWeekdaysFromPattern";
import { weekdaysFromName } from "../domain/dates/weekdaysFromName";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

const EXPECTED = 'weekdays such as "Sun, Mon" or "Sat-Mon", "weekends" or "none"';
const WEEKEND = 0b1100000;
const NONE =
  /^(?:none|no|never|no days?|open daily|daily|always open|open every day|aucun|jamais|nunca|ninguno|nessuno|mai|keine?|nie|[-–—])$/;
const FILLERS =
  /\b(?:closed|closes|every|each|all|on|the|ferme|fermee|fermeture|le|les|cerrado|cierra|los|el|chiuso|chiude|il|la|geschlossen|am|jeden?)\b|:/g;
const WEEKENDS = /^(?:(?:the )?week-?ends?|we|wochenenden?|fin(?:es)? de semana|fine settimana)$/;
const AND = /\s*(?:[,;/&+]|\band\b|\bund\b|\bet\b|\by\b|\be\b)\s*/;
const TO = /\s*(?:[-–—]|\bto\b|\btill\b|\buntil\b|\bthrough\b|\bbis\b|\bau\b|\ba\b|\bal\b)\s*/;

/**
 * The weekdays on which a lender is closed, as bits (bit 0 Monday to bit 6 Sunday); 0 where it never closes.
 *
 * Text: names and short forms in English, French, Spanish, Italian and German, in a list ("Sun, Mon", "lun et mar") or a span
 * that may run over the week's end ("Sat-Mon"); "weekends"; "none" or "-". Numbers are weekend codes (1 to 7, 11 to 17), text of
 * seven characters 0 and 1 a pattern, Monday first. Blank is null. A short form that is two weekdays in two languages ("do") gives
 * argument-not-usable, as do half days and other text; an error value gives error-in-cell.
 */
export function readClosedWeekdays(raw: unknown, argument: string): Outcome<number | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null) return succeed(null);
  const bits =
    typeof value === "boolean" ? null : typeof value === "number" ? closedWeekdaysFromCode(value) : bitsFromText(value);
  return bits === null
    ? fail("argument-not-usable", { argument, given: showGiven(value), expected: EXPECTED })
    : succeed(bits);
}

function bitsFromText(text: string): number | null {
  if (/^[1-9]\d?$/.test(text)) return closedWeekdaysFromCode(Number(text));
  if (/^\d+$/.test(text)) return closedWeekdaysFromPattern(text);
  const plain = text
    .normalize("NFD")
    .replace(/[\u0300-\u036f.]/g, "")
    .toLowerCase()
    .trim();
  if (NONE.test(plain)) return 0;
  const list = plain.replace(FILLERS, " ").replace(/\s+/g, " ").trim();
  if (list === "") return null;
  let bits = 0;
  for (const part of list.split(AND)) {
    const partBits = WEEKENDS.test(part) ? WEEKEND : bitsFromPart(part);
    if (partBits === null) return null;
    bits |= partBits;
  }
  return bits;
}

function bitsFromPart(part: string): number | null {
  const single = weekdayFromWord(part);
  if (single !== null) return 1 << single;
  // "Sun Mon" is a list, "Sat-Mon" a span.
  const words = part.split(" ");
  const listed = words.map(weekdayFromWord);
  if (words.length > 1 && listed.every((weekday) => weekday !== null)) {
    return listed.reduce<number>((bits, weekday) => bits | (1 << weekday), 0);
  }
  const ends = part.split(TO);
  const from = weekdayFromWord(ends[0] ?? "");
  const until = weekdayFromWord(ends[1] ?? "");
  if (ends.length !== 2 || from === null || until === null) return null;
  let bits = 1 << from;
  for (let weekday = from; weekday !== until;) {
    weekday = (weekday + 1) % 7;
    bits |= 1 << weekday;
  }
  return bits;
}

function weekdayFromWord(word: string): number | null {
  const found = weekdaysFromName(word);
  if (found.length === 1) return found[0]!;
  // "Mondays", "Sonntags"
  const single = word.length > 3 && word.endsWith("s") ? weekdaysFromName(word.slice(0, -1)) : [];
  return single.length === 1 ? single[0]! : null;
}
