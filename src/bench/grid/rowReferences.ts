import { tokenizeFormula } from "../../sheet/tokenizeFormula";

/**
 * A typed formula with its short row references spelled out, since the engine knows only the long form:
 * Loans[@Terms] becomes Loans[[#This Row],[Terms]], and [@Terms] inside a table gets the table's name.
 */
export function rowReferences(formula: string, ownTable: string | null): string {
  if (!formula.includes("[@")) return formula;
  let before = "";
  return tokenizeFormula(formula)
    .map((token) => {
      const named = before === "name" || before === "sheet";
      before = token.kind;
      if (token.kind !== "bracket" || !token.text.startsWith("[@")) return token.text;
      const column = /^\[@(?:\[([\s\S]*)\]|([\s\S]*))\]$/.exec(token.text);
      if (column === null || (!named && ownTable === null)) return token.text;
      const heading = column[1] ?? column[2] ?? "";
      const reference = heading === "" ? "[#This Row]" : `[[#This Row],[${heading}]]`;
      return (named ? "" : ownTable) + reference;
    })
    .join("");
}
