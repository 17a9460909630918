import { tokenizeFormula } from "../../sheet/tokenizeFormula";

/** A formula after sheets were given other names; `newName` is keyed by the old name in small letters. */
export function renamedFormula(formula: string, newName: ReadonlyMap<string, string>): string {
  const tokens = tokenizeFormula(formula);
  return tokens
    .map((token, index) => {
      if (!tokens[index + 1]?.text.startsWith("!")) return token.text;
      const old = token.kind === "sheet" ? token.text.slice(1, -1).replace(/''/g, "'") : token.text;
      const name = token.kind === "sheet" || token.kind === "name" ? newName.get(old.toLowerCase()) : undefined;
      return name === undefined ? token.text : `'${name.replace(/'/g, "''")}'`;
    })
    .join("");
}
