import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { figuresFromText } from "./figuresFromText";
import { readScalar } from "./readScalar";

/**
 * A number, also one kept as text: "1250", "-3.5", "1,250.00", "1.250,00", "1 250", "12.5%" (0.125).
 *
 * Blank is null. "1,250" reads two ways and gives number-ambiguous; a truth value, other text or a number that is not finite
 * gives argument-not-usable; an error value gives error-in-cell.
 */
export function readNumber(raw: unknown, argument: string, expected = "a number"): Outcome<number | null> {
  if (typeof raw === "number" && Number.isFinite(raw)) return succeed(raw);
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || (typeof value === "number" && Number.isFinite(value))) return succeed(value);
  const given = showGiven(value);
  const refused = fail("argument-not-usable", { argument, given, expected });
  if (typeof value !== "string") return refused;
  const parts = /^([-−+])?\s*(.*?)\s*(%)?$/.exec(value);
  const figures = parts === null ? null : figuresFromText(parts[2]!);
  if (parts === null || figures === null) return refused;
  const scale = (parts[1] === "-" || parts[1] === "−" ? -1 : 1) / (parts[3] === undefined ? 1 : 100);
  if (figures.reads === "one way") return succeed(figures.amount * scale || 0);
  return fail("number-ambiguous", {
    argument,
    given,
    first: String(figures.grouped * scale),
    second: String(figures.decimal * scale),
  });
}
