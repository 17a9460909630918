import { bareFormula } from "../../sheet/bareFormula";

/**
 * A formula as it is typed where a semicolon parts arguments and a comma stands in numbers, put into the engine's own
 * form; one without such a semicolon stays as it is, and so do array constants, where a semicolon parts rows.
 */
export function withCommas(formula: string): string {
  if (!formula.includes(";")) return formula;
  const bare = bareFormula(formula);
  let depth = 0;
  let hasSemicolon = false;
  let read = "";
  for (let at = 0; at < formula.length; at++) {
    const character = bare[at]!;
    if (character === "{") depth += 1;
    if (character === "}") depth -= 1;
    const isParting = depth === 0 && character === ";";
    const isDecimal =
      depth === 0 && character === "," && /\d/.test(bare[at - 1] ?? "") && /\d/.test(bare[at + 1] ?? "");
    hasSemicolon ||= isParting;
    read += isParting ? "," : isDecimal ? "." : formula[at];
  }
  return hasSemicolon ? read : formula;
}
