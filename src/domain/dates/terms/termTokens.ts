import { monthFromName } from "../monthFromName";
import { weekdaysFromName } from "../weekdaysFromName";
import { numberFromWord } from "./numberFromWord";
import { termSymbol } from "./termSymbol";

/**
 * A phrase cut into words that matter, one symbol each (see termSymbol; besides: n number, o ordinal number, F weekday, N a month's name,
 * f figures such as 7-10 or 03/04/26, ? not understood).
 */
export interface TermTokens {
  readonly symbols: string;
  /** The number of an n or o, the weekday of an F; 0 for the others. */
  readonly values: readonly number[];
}

/** Where each of the words begins and ends in the text. */
export interface TokenPlaces {
  readonly starts: number[];
  readonly ends: number[];
}

// Punctuation that says nothing. A question mark, a slash or a percent sign does say something, so those are not understood.
const SILENT = " \t\r\n.,;:!()[]'\"*_-";
// In the other languages terms are not said with ordinals.
const ORDINALS = ["", "first", "second", "third", "fourth", "fifth"];
const ORDINAL_ENDINGS = new Set(["st", "nd", "rd", "th", "er", "o"]);
const UNITS = "DdWBbCKMZH";

/** Cuts lower-case text without accents into its words, and notes their places where these are wanted: only a refusal wants them. */
export function termTokens(text: string, places?: TokenPlaces): TermTokens {
  let symbols = "";
  let last = "";
  const values: number[] = [];
  const length = text.length;
  let articleAt = -1;
  let isOne = false;
  for (let at = 0; at < length;) {
    const start = at;
    const code = text.charCodeAt(at);
    let symbol: string | undefined;
    let value = 0;
    if (code >= 97 && code <= 122) {
      for (at++; at < length && isLetter(text.charCodeAt(at));) at++;
      const word = text.slice(start, at);
      symbol = termSymbol(word);
      if (symbol === undefined) {
        const isEnding = last === "n" && ORDINAL_ENDINGS.has(word) && isDigit(text.charCodeAt(start - 1));
        if (isEnding) {
          symbols = `${symbols.slice(0, -1)}o`;
          last = "o";
          continue;
        }
        ({ symbol, value } = readWord(word, text.slice(at)));
      }
    } else if (isDigit(code)) {
      value = code - 48;
      for (at++; at < length && isDigit(text.charCodeAt(at)); at++) value = value * 10 + text.charCodeAt(at) - 48;
      const whole = at;
      while (at < length && isFigure(text, at)) at++;
      symbol = at === whole && at - start < 8 ? "n" : "f";
    } else if (code === 32) {
      at++;
      continue;
    } else if (code === 43) {
      at++;
      symbol = "A";
    } else {
      at++;
      // "-3 days" must not lose its sign; "5-Mar-26" has none.
      if (code === 45 && at < length && isDigit(text.charCodeAt(at)) && last !== "N") symbol = "?";
      else symbol = SILENT.includes(text[start]!) ? "" : "?";
    }
    if (symbol === "") continue;
    // An article counts one only before what is counted; elsewhere it is said for politeness ("a partir de", "a 7 day loan"),
    // but "one to two weeks" says two numbers.
    if (articleAt >= 0 && articleAt === symbols.length - 1 && !UNITS.includes(symbol!)) {
      const isNumber = isOne && (symbol === "a" || ("no".includes(symbol!) && value !== 1));
      symbols = symbols.slice(0, -1);
      if (isNumber) symbols += "?";
      else {
        values.pop();
        places?.starts.pop();
        places?.ends.pop();
      }
      last = symbols.slice(-1);
      articleAt = -1;
    }
    if (symbol === "a") {
      articleAt = symbols.length;
      isOne = !/^an?$/.test(text.slice(start, at));
      value = 1;
    }
    // "seven (7) days" says one number twice.
    if (symbol === "n" && last === "n" && values[values.length - 1] === value) continue;
    symbols += symbol;
    last = symbol!;
    values.push(value);
    places?.starts.push(start);
    places?.ends.push(at);
  }
  return { symbols: symbols.includes("a") ? symbols.replaceAll("a", "n") : symbols, values };
}

/** A word that termSymbol does not list: a number, an ordinal, a month, a weekday, or not understood. */
function readWord(word: string, after: string): { symbol: string; value: number } {
  const number = numberFromWord(word);
  if (number !== undefined) return { symbol: "n", value: number };
  const ordinal = ORDINALS.indexOf(word);
  if (ordinal > 0) return { symbol: "o", value: ordinal };
  // "sept jours" is a number, "5 sept 2026" a month.
  if (word === "sept" && /^ (?:j|sem|mois|h)/.test(after)) return { symbol: "n", value: 7 };
  if (monthFromName(word) !== null) return { symbol: "N", value: 0 };
  const weekdays = word.length < 3 ? [] : weekdaysFromName(word);
  return weekdays.length === 1 ? { symbol: "F", value: weekdays[0]! } : { symbol: "?", value: 0 };
}

function isLetter(code: number): boolean {
  return code >= 97 && code <= 122;
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** A digit, or a sign between two digits, which keeps "7-10", "1.5" and "2026-03-05" in one piece. */
function isFigure(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (isDigit(code)) return true;
  return (code === 45 || code === 46 || code === 47 || code === 44 || code === 58) && isDigit(text.charCodeAt(at + 1));
}
