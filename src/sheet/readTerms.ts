import { parseTerms } from "../domain/dates/terms/parseTerms";
import type { Terms } from "../domain/dates/terms/terms";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

/**
 * Return terms from a cell: text as lenders write it, or a number of calendar days.
 *
 * Blank is null, and so is a number 0, as some hosts send blank cells so: the same day is said in words. Problems: those of
 * parseTerms, argument-not-usable for a truth value, error-in-cell.
 */
export function readTerms(raw: unknown, argument: string): Outcome<Terms | null> {
  const scalar = typeof raw === "string" && raw !== "" ? succeed(raw) : readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || value === 0 || (typeof value === "string" && value.trim() === "")) return succeed(null);
  if (typeof value !== "boolean") return parseTerms(value, argument);
  const expected = 'terms such as "7 days", "3 working days" or a number of calendar days';
  return fail("argument-not-usable", { argument, given: value ? "TRUE" : "FALSE", expected });
}
