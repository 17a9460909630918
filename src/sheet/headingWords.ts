import { fillers, words } from "../../shared/headings.json";

const FILLERS: ReadonlySet<string> = new Set(fillers.split(" "));
/** A word to what is put in its place, which may be two words. */
const PLAIN_OF: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(words).flatMap(([plain, listed]) =>
    listed.split(" ").map((word) => [word, plain.split(" ")] as const),
  ),
);

/**
 * A heading's words as they are compared: without case, accents, punctuation, fillers and plural s, abbreviations written out
 * and words of other languages put into English.
 *
 * "Ret. dates", "RetDate" and "Rückgabedatum" give return, date. Currency signs and # stay, since they say something.
 */
export function headingWords(heading: string): string[] {
  const plain = bareWords(heading).flatMap((word) => {
    const single = word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word;
    return PLAIN_OF.get(word) ?? PLAIN_OF.get(single) ?? (FILLERS.has(word) ? [] : [single]);
  });
  // "Ref. no." says no twice.
  return plain.filter((word, index) => word !== plain[index - 1]);
}

function bareWords(heading: string): string[] {
  return (
    heading
      .slice(0, 200)
      .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
      .replace(/°/g, " ")
      .normalize("NFKD")
      .replace(/[\u0300-\u036f]/g, "")
      .toLowerCase()
      .replace(/ß/g, "ss")
      // "Make-up", "make up" and "makeup" are one word.
      .replace(/\b(make|pick|cut)\W?(up|off)\b/g, "$1$2")
      .match(/[£€$¥#]|[\p{L}\p{N}]+/gu) ?? []
  );
}
