import { nameKey } from "../sheet/nameKey";
import { isOneSlip } from "./isOneSlip";
import { keyWithoutAnd } from "./keyWithoutAnd";

/** Below so many letters one letter makes another name: Ado and Ada, Halden and Holden. */
const SHORTEST_NAME = 7;
/** In a word of so many letters a letter exchanged for another is a slip; in a shorter one it is another word: Lea and Leo. */
const SHORTEST_EXCHANGE = 5;

/**
 * Whether two names are likely one name, once mistyped.
 *
 * One slip apart in names of 7 letters and more, never in the first letter and never in a figure ("Studio 1", "Studio 2"). A letter
 * exchanged for another counts only in a word of 5 letters and more, one left out or put in only in a word of 3 and more.
 * A word for "and" in place of "&" is one too. Names that differ in case, accents, spacing or punctuation alone are the same name, and no slip.
 * Who compares many names passes their keys.
 */
export function isLikelySlip(one: string, other: string, oneKey = nameKey(one), otherKey = nameKey(other)): boolean {
  if (Math.min(oneKey.length, otherKey.length) < SHORTEST_NAME) return false;
  if (oneKey !== otherKey && keyWithoutAnd(one) === keyWithoutAnd(other)) return true;
  if (oneKey[0] !== otherKey[0] || !isOneSlip(oneKey, otherKey)) return false;
  if (oneKey.replace(/\P{N}/gu, "") !== otherKey.replace(/\P{N}/gu, "")) return false;
  const words = wordsOf(one);
  const otherWords = wordsOf(other);
  // A space is put in or left out beside the slip: the words cannot be compared one by one, the names can.
  if (words.length !== otherWords.length) return true;
  const at = words.findIndex((word, index) => word !== otherWords[index]);
  const [word, otherWord] = [words[at] ?? "", otherWords[at] ?? ""];
  const shortest = word.length === otherWord.length && !isSwap(word, otherWord) ? SHORTEST_EXCHANGE : 3;
  return Math.min(word.length, otherWord.length) >= shortest;
}

function isSwap(word: string, other: string): boolean {
  return [...word].sort().join("") === [...other].sort().join("");
}

function wordsOf(name: string): readonly string[] {
  return name
    .split(/[\s\-–—/&.,'’]+/)
    .map(nameKey)
    .filter((word) => word !== "");
}
