import type { CheckedRow } from "./checkedRow";
import type { CheckFacts } from "./checkFacts";
import { looksNamed, type NamedLook } from "./looksNamed";
import { textIn } from "./textIn";

/** The looks that a piece's row names. */
export function looksOf(row: CheckedRow, facts: CheckFacts): readonly NamedLook[] {
  const text = textIn(row, "look");
  return text === null ? [] : looksNamed(text, facts.looks());
}
