import type { Look } from "../domain/day/look";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { nameKey } from "./nameKey";
import { readScalar } from "./readScalar";

const FIRST = new Set("first premier premiere erste erster erstes primero primera primo prima".split(" "));
const LAST = new Set("last dernier derniere letzte letzter letztes ultimo ultima".split(" "));

/**
 * The place a look must have in the order: first, last, or a position counted from 1 (a number, or text such as "3" or "3rd").
 *
 * Blank and 0 are null. Problems: argument-not-usable, error-in-cell.
 */
export function readFixed(raw: unknown, argument: string): Outcome<Look["fixed"]> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || value === 0) return succeed(null);
  const word = nameKey(String(value)).replace(/\p{M}/gu, "");
  if (FIRST.has(word)) return succeed("first");
  if (LAST.has(word)) return succeed("last");
  const position = /^(\d{1,6})(?:st|nd|rd|th)?$/.exec(String(value).trim().toLowerCase());
  if (position !== null && +position[1]! > 0) return succeed(+position[1]!);
  const expected = "first, last or a position such as 3";
  return fail("argument-not-usable", { argument, given: showGiven(value), expected });
}
