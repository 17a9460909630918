import { termForms } from "./termForms";
import type { TokenPlaces } from "./termTokens";

/** The part of a phrase that keeps it from being understood: the words not known, else what follows the longest part that is terms by itself. */
export function unreadPart(text: string, symbols: string, { starts, ends }: TokenPlaces): string {
  const unknown = symbols.indexOf("?");
  if (unknown >= 0) {
    let last = unknown;
    while (symbols[last + 1] === "?") last++;
    return wholeWords(text, starts[unknown]!, ends[last]!);
  }
  // "second Monday": the form is right, only its number is not.
  if (termForms.weekday.test(symbols)) return text.slice(starts[0], ends[symbols.indexOf("F")]);
  for (let count = symbols.length - 1; count > 0; count--) {
    const words = symbols.slice(0, count);
    if (!Object.values(termForms).some((form) => form.test(words))) continue;
    return wholeWords(text, starts[count]!, ends[symbols.length - 1]!);
  }
  return symbols === "" ? text.trim() : wholeWords(text, starts[0]!, ends[symbols.length - 1]!);
}

/** "5pm", not "pm": the part begins and ends at spaces. */
function wholeWords(text: string, from: number, to: number): string {
  let start = from;
  let end = to;
  while (start > 0 && text[start - 1] !== " ") start--;
  while (end < text.length && text[end] !== " ") end++;
  return text.slice(start, end).replace(/^[\s.,;:(]+|[\s.,;:)]+$/g, "") || text.slice(from, to);
}
