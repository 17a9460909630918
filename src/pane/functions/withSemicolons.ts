import { bareFormula } from "../../sheet/bareFormula";

/** A formula as it is typed where a semicolon parts arguments and a comma stands in numbers. Array constants stay as they are. */
export function withSemicolons(formula: string): string {
  const bare = bareFormula(formula);
  let depth = 0;
  let typed = "";
  for (let at = 0; at < formula.length; at++) {
    const character = bare[at]!;
    if (character === "{") depth += 1;
    if (character === "}") depth -= 1;
    const isPoint = character === "." && /\d/.test(bare[at - 1] ?? "") && /\d/.test(bare[at + 1] ?? "");
    typed += depth > 0 ? formula[at] : character === "," ? ";" : isPoint ? "," : formula[at];
  }
  return typed;
}
