import { bareFormula } from "../../sheet/bareFormula";

/** One argument of a call: its text, and where it stands in the formula. */
export interface CallArgument {
  readonly from: number;
  readonly until: number;
  readonly text: string;
}

/** A call of one of our functions inside a formula. */
export interface OwnCall {
  readonly id: string;
  /** One blank argument where nothing stands between the brackets. */
  readonly args: readonly CallArgument[];
  /** Where its closing bracket stands. */
  readonly closesAt: number;
}

const NAME = /(?<![\w.])(?:TACK\.|_xldudf_TACK_)([A-Z][\w.]*)\s*\(/gi;

/** The calls of our functions in a formula, in the order they begin; a call that is not closed is left out. */
export function ownCalls(formula: string): readonly OwnCall[] {
  const bare = bareFormula(formula);
  const calls: OwnCall[] = [];
  for (const match of bare.matchAll(NAME)) {
    const call = callAt(formula, bare, match.index + match[0].length, match[1]!);
    if (call !== null) calls.push(call);
  }
  return calls;
}

function callAt(formula: string, bare: string, start: number, name: string): OwnCall | null {
  const args: CallArgument[] = [];
  let depth = 0;
  let from = start;
  const end = (until: number) => {
    args.push({ from, until, text: formula.slice(from, until) });
    from = until + 1;
  };
  for (let at = start; at < bare.length; at++) {
    const character = bare[at]!;
    if (character === "(" || character === "{") depth++;
    else if (character === "}" || (character === ")" && depth > 0)) depth--;
    else if (character === ")") {
      end(at);
      return { id: name.replace(/_/g, ".").toUpperCase(), args, closesAt: at };
    } else if (character === "," && depth === 0) end(at);
  }
  return null;
}
