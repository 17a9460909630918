import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

/**
 * One of a few words, whatever its case. Blank is null, and so is 0, as some hosts send blank cells so. Problems: argument-not-usable (with the words listed), error-in-cell.
 */
export function readChoice<C extends string>(raw: unknown, argument: string, choices: readonly C[]): Outcome<C | null> {
  if (raw === null || raw === undefined) return succeed(null);
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || value === 0) return succeed(null);
  const word = String(value).toLowerCase();
  const chosen = choices.find((choice) => choice.toLowerCase() === word);
  if (chosen !== undefined) return succeed(chosen);
  const quoted = choices.map((choice) => `"${choice}"`);
  const expected = quoted.length === 1 ? quoted[0]! : `${quoted.slice(0, -1).join(", ")} or ${quoted.at(-1)}`;
  return fail("argument-not-usable", { argument, given: showGiven(value), expected });
}
