// What Excel reads as a truth value, in the languages the headings are known in; other words stay words.
const TRUTH_WORDS = new Set("true false vrai faux wahr falsch verdadero falso vero waar onwaar verdadeiro".split(" "));

/**
 * Text as it must be handed to a range so that it stays that text.
 *
 * Excel reads what is set as if it had been typed: "007" becomes 7, "5 Mar" a day, "=A1" a formula. A leading
 * apostrophe, which is not part of the value, prevents that; plain words go without, since it shows in the formula bar.
 */
export function literalText(text: string): string {
  const isPlain = /^\p{L}\D*$/u.test(text) && !TRUTH_WORDS.has(text.trim().toLowerCase());
  return isPlain ? text : `'${text}`;
}
