import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

const YES = new Set("yes y true t x 1 ok done ✓ ✔ ✔️ ☑ oui vrai ja j wahr si sí s verdadero vero".split(" "));
const NO = new Set("no n false f 0 - – — ✗ ✘ ☐ non faux nein falsch falso".split(" "));

/**
 * Yes or no: TRUE, FALSE, 1, 0, a tick or cross ("x" is a tick), or a word in English, French, Spanish, Italian or German.
 *
 * Blank is null, and what blank means is the caller's to say. Problems: argument-not-usable, error-in-cell.
 */
export function readFlag(raw: unknown, argument: string): Outcome<boolean | null> {
  if (typeof raw === "boolean") return succeed(raw);
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || typeof value === "boolean") return succeed(value);
  const word = String(value)
    .toLowerCase()
    .replace(/[.!]+$/, "");
  if (YES.has(word)) return succeed(true);
  if (NO.has(word)) return succeed(false);
  return fail("argument-not-usable", { argument, given: showGiven(value), expected: "yes or no" });
}
