import prefixed from "./prefixedFunctions.json";
import { tokenizeFormula, type FormulaToken } from "../../sheet/tokenizeFormula";

const PREFIX_OF: ReadonlyMap<string, string> = new Map([
  ...prefixed.xlfn.map((name): [string, string] => [name, "_xlfn."]),
  ...prefixed.xlws.map((name): [string, string] => [name, "_xlfn._xlws."]),
]);

/**
 * A formula of the grid as a workbook file keeps it, without =: functions newer than the file format get their prefix,
 * the names that LET and LAMBDA declare get theirs, and an add-in's call is written as _xldudf_TACK_DUE.
 */
export function fileFormula(formula: string): string {
  const tokens = tokenizeFormula(formula.replace(/^=/, ""));
  const declared = declaredNames(tokens);
  return tokens.map((token, index) => fileToken(token, tokens[index + 1], declared)).join("");
}

function fileToken(token: FormulaToken, next: FormulaToken | undefined, declared: ReadonlySet<string>): string {
  if (token.kind !== "name") return token.text;
  const name = token.text.toUpperCase();
  if (declared.has(name)) return `_xlpm.${token.text}`;
  if (!next?.text.startsWith("(")) return token.text;
  if (name.startsWith("TACK.")) return `_xldudf_${name.replace(/\./g, "_")}`;
  return (PREFIX_OF.get(name) ?? "") + token.text;
}

/** The names declared by LET (every odd argument but the last) and LAMBDA (every argument but the last). */
function declaredNames(tokens: readonly FormulaToken[]): ReadonlySet<string> {
  const declared = new Set<string>();
  tokens.forEach((token, index) => {
    const call = token.kind === "name" ? token.text.toUpperCase() : "";
    if (call !== "LET" && call !== "LAMBDA") return;
    const leading = leadingNames(tokens, index + 1);
    leading.slice(0, -1).forEach((name, position) => {
      if (name !== null && (call === "LAMBDA" || position % 2 === 0)) declared.add(name.toUpperCase());
    });
  });
  return declared;
}

/** For each argument of the call whose "(" stands at `from`: its text when it is one plain name, else null. */
function leadingNames(tokens: readonly FormulaToken[], from: number): (string | null)[] {
  const values: string[] = [""];
  let depth = 0;
  for (const token of tokens.slice(from)) {
    if (token.kind !== "other") {
      values[values.length - 1] += token.text;
      continue;
    }
    for (const character of token.text) {
      if ("({".includes(character)) depth++;
      if (")}".includes(character)) depth--;
      if (depth === 0) return values.map(plainName);
      if (depth === 1 && character === ",") values.push("");
      else if (!(depth === 1 && character === "(" && values.length === 1 && values[0] === "")) {
        values[values.length - 1] += character;
      }
    }
  }
  return values.map(plainName);
}

function plainName(value: string): string | null {
  const name = value.trim();
  return /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(name) ? name : null;
}
