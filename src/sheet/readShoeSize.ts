import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import type { ShoeSystem } from "../domain/prep/shoeSystem";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { halvesInFigures } from "./halvesInFigures";
import { readScalar } from "./readScalar";
import { readShoeSystem } from "./readShoeSystem";

const SIZE = /^(\D*?)\s*(\d{1,3}(?:\.\d+)?)\s*(\D*)$/;

/**
 * A shoe size as typed: a number, or text such as "38", "38½", "7 1/2", "38,5", "UK 7" or "US 8 women"; the system is null where the cell
 * names none. M or W after a size may be a width as well as whose it is, so "US 8 W" takes the system `told`, of the two of the US. Blank (also 0) is null. Problems: argument-not-usable (also for two sizes, such as "38-39"), error-in-cell.
 */
export function readShoeSize(
  raw: unknown,
  argument: string,
  told: ShoeSystem | null = null,
): Outcome<{ readonly size: number; readonly system: ShoeSystem | null } | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const { value } = scalar;
  if (value === null || value === 0) return succeed(null);
  if (typeof value === "number") return succeed({ size: value, system: null });
  const plain = halvesInFigures(String(value)).replace(/(\d),(\d)/, "$1.$2");
  const [, before = "", figures, after = ""] = SIZE.exec(plain) ?? [];
  if (figures === undefined || typeof value === "boolean")
    return fail("argument-not-usable", {
      argument,
      given: showGiven(value),
      expected: "one shoe size, such as 38 or UK 7",
    });
  if (/^us$/i.test(before) && /^[mw]$/i.test(after) && told !== null && told.startsWith("US"))
    return succeed({ size: Number(figures), system: told });
  if (/^[mw]$/i.test(after))
    return fail("argument-not-usable", {
      argument,
      given: showGiven(value),
      expected: '"US men" or "US women" beside the size, as M and W may be widths',
    });
  const system = readShoeSystem(`${before} ${after}`, argument);
  return system.ok ? succeed({ size: Number(figures), system: system.value }) : system;
}
