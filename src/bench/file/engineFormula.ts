import { tokenizeFormula } from "../../sheet/tokenizeFormula";

const FILE_PREFIX = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/;
const ADD_IN_CALL = /^_xldudf_([A-Za-z]+)_(.+)$/i;

/**
 * A formula of a workbook file as the grid's engine reads it, with =: the file's prefixes are taken off and an add-in's
 * call, kept as _xldudf_TACK_DUE and sometimes with [2]! in front, gets its own name again.
 */
export function engineFormula(fileFormula: string): string {
  const tokens = tokenizeFormula(fileFormula);
  let formula = fileFormula.startsWith("=") ? "" : "=";
  tokens.forEach((token, index) => {
    if (token.kind === "bracket" && /^\[\d+\]$/.test(token.text) && addInCallFollows(tokens, index)) return;
    if (token.kind === "other" && token.text === "!" && ADD_IN_CALL.test(tokens[index + 1]?.text ?? "")) return;
    formula += token.kind === "name" ? engineName(token.text) : token.text;
  });
  return formula;
}

function addInCallFollows(tokens: readonly { text: string }[], index: number): boolean {
  return tokens[index + 1]?.text === "!" && ADD_IN_CALL.test(tokens[index + 2]?.text ?? "");
}

function engineName(name: string): string {
  const bare = name.replace(FILE_PREFIX, "");
  return bare
    .replace(ADD_IN_CALL, (_, namespace: string, id: string) => `${namespace}.${id.replace(/_/g, ".")}`)
    .replace(/^TACK\..*$/i, (call) => call.toUpperCase());
}
