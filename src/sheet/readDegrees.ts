import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readScalar } from "./readScalar";

const DEGREES = /^([-+−]?\d{1,3}(?:[.,]\d+)?)\s*°?\s*([nsew]?)$/i;

/**
 * A latitude or longitude in decimal degrees, at most `most` from 0: a number, or text such as "51,5074" or "0.1278° W".
 *
 * Blank is null. South and west are below 0; "O" is west in one language and east in another, and refused. Problems: argument-not-usable (degrees with minutes and seconds too), error-in-cell.
 */
export function readDegrees(raw: unknown, argument: string, most: 90 | 180): Outcome<number | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  if (scalar.value === null) return succeed(null);
  const [, figures = "", side = ""] = DEGREES.exec(String(scalar.value)) ?? [];
  const size =
    typeof scalar.value === "number" ? scalar.value : parseFloat(figures.replace(",", ".").replace("−", "-"));
  const degrees = /[sw]/i.test(side) ? -size : size;
  if (Math.abs(degrees) <= most) return succeed(degrees);
  const expected = `degrees from -${most} to ${most}, such as ${most === 90 ? "51.5074" : "-0.1278"}`;
  return fail("argument-not-usable", { argument, given: showGiven(scalar.value), expected });
}
