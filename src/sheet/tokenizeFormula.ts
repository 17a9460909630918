/** text: "…"; sheet: '…'; bracket: […] with all that is nested; name: a function, a name or a reference; other: the rest. */
export type FormulaTokenKind = "text" | "sheet" | "bracket" | "name" | "other";

/** One piece of a formula, exactly as written. */
export interface FormulaToken {
  readonly kind: FormulaTokenKind;
  readonly text: string;
}

const PLAIN: readonly (readonly [FormulaTokenKind, RegExp])[] = [
  ["text", /"(?:[^"]|"")*"?/y],
  ["sheet", /'(?:[^']|'')*'?/y],
  ["name", /[\p{L}_\\][\p{L}\p{N}_.\\?]*/uy],
  ["other", /[^"'[\p{L}_\\]+/uy],
];

/** A formula cut into pieces whose texts together are the formula again; never fails, also on half a formula. */
export function tokenizeFormula(formula: string): FormulaToken[] {
  const tokens: FormulaToken[] = [];
  let position = 0;
  while (position < formula.length) {
    const token = formula[position] === "[" ? bracketAt(formula, position) : plainAt(formula, position);
    tokens.push(token);
    position += token.text.length;
  }
  return tokens;
}

function plainAt(formula: string, position: number): FormulaToken {
  for (const [kind, pattern] of PLAIN) {
    pattern.lastIndex = position;
    const text = pattern.exec(formula)?.[0];
    if (text !== undefined && text !== "") return { kind, text };
  }
  return { kind: "other", text: formula.charAt(position) };
}

/** In a structured reference an apostrophe makes the next character plain. */
function bracketAt(formula: string, start: number): FormulaToken {
  let depth = 0;
  for (let position = start; position < formula.length; position++) {
    const character = formula[position];
    if (character === "'") position++;
    else if (character === "[") depth++;
    else if (character === "]" && --depth === 0) {
      return { kind: "bracket", text: formula.slice(start, position + 1) };
    }
  }
  return { kind: "bracket", text: formula.slice(start) };
}
