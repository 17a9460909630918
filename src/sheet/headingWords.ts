import headings from "../../shared/headings.json";

const FILLERS: ReadonlySet<string> = new Set(headings.fillers.split(" "));
const WORD_OF: ReadonlyMap<string, string> = new Map(
  Object.entries(headings.words).flatMap(([word, alike]) => alike.split(" ").map((other) => [other, word] as const)),
);

/**
 * A heading's words as they are compared: without case, accents, punctuation, fillers and plural s, abbreviations written out.
 *
 * "Ret. dates", "RetDate" and "return date" give the same words. Currency signs and # stay, since they say something.
 */
export function headingWords(heading: string): string[] {
  return plainWords(heading).flatMap((word) => {
    const single = word.length > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.slice(0, -1) : word;
    const written = WORD_OF.get(single) ?? WORD_OF.get(word) ?? single;
    return FILLERS.has(written) ? [] : [written];
  });
}

function plainWords(heading: string): string[] {
  return (
    heading
      .slice(0, 200)
      .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
      .replace(/[£€$¥#°]/g, (sign) => (sign === "°" ? " " : ` ${sign} `))
      .normalize("NFKD")
      .replace(/[\u0300-\u036f]/g, "")
      .toLowerCase()
      .replace(/ß/g, "ss")
      .match(/[£€$¥#]|[\p{L}\p{N}]+/gu) ?? []
  );
}
