import { tokenizeFormula } from "./tokenizeFormula";

/** A formula with its texts, quoted sheet names and structured references blanked out, every other character in its place. */
export function bareFormula(formula: string): string {
  return tokenizeFormula(formula)
    .map(({ kind, text }) => (kind === "name" || kind === "other" ? text : "_".repeat(text.length)))
    .join("");
}
