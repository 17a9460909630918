import { readLiteral } from "./readLiteral";
import { splitOutside } from "./splitOutside";

/** What a formula of literals says: the function's id and its arguments; one left out between commas is undefined. */
export interface Formula {
  readonly id: string;
  readonly args: readonly unknown[];
}

/**
 * Reads a formula whose arguments are literals: numbers, "text", TRUE, FALSE, DATE(y,m,d), TIME(h,m,s) and
 * array constants {..,..;..}. Anything else throws, since an example that is not read is not tested.
 */
export function readFormula(formula: string): Formula {
  const opened = /^=TACK\.([A-Z0-9._]+)\(/.exec(formula);
  if (opened === null || !formula.endsWith(")")) throw new Error(`No call of a TACK function: ${formula}`);
  const inside = formula.slice(opened[0].length, -1);
  return { id: opened[1]!, args: inside.trim() === "" ? [] : splitOutside(inside, ",").map(readLiteral) };
}
