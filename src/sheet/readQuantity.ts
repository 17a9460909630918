import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

const COUNTED =
  /^(?:x|×|qty\.? ?)? ?(\d{1,9}) ?(?:x|×|pcs?\.?|pieces?|pairs?|prs?\.?|items?|off|ea\.?|stk\.?|stück|paar|pièces?|paires?|piezas?|pares?|pezzi|paia)?$/i;

/**
 * A whole number of pieces, 0 or more; text may carry a word of counting ("2 pcs", "x2", "1 pair": a pair is one piece).
 *
 * Blank is null, and what blank or 0 means is for the reader of the table to say. Problems: argument-not-usable, error-in-cell.
 */
export function readQuantity(raw: unknown, argument: string): Outcome<number | null> {
  if (typeof raw === "number" && raw >= 0 && Number.isSafeInteger(raw)) return succeed(raw);
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || (typeof value === "number" && value >= 0 && Number.isSafeInteger(value))) return succeed(value);
  const counted = typeof value === "string" ? COUNTED.exec(value) : null;
  if (counted !== null) return succeed(Number(counted[1]));
  const expected = "a whole number of pieces, 0 or more";
  return fail("argument-not-usable", { argument, given: showGiven(value), expected });
}
