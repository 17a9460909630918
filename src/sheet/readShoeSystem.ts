import { systems } from "../../shared/shoe-sizes.json";
import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import type { ShoeSystem } from "../domain/prep/shoeSystem";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { nameKey } from "./nameKey";
import { readScalar } from "./readScalar";

const NAMES = Object.keys(systems) as ShoeSystem[];
const SYSTEM_OF = new Map(
  NAMES.flatMap((name) => [nameKey(name), ...systems[name].also.split(" ")].map((key) => [key, name] as const)),
);

/**
 * A way to number shoe sizes: "EU", "UK", "US men", "US women" or "Mondopoint", or another way to write one. Blank (also 0) is null.
 *
 * "US" alone is two systems and is refused. Problems: argument-not-usable, error-in-cell.
 */
export function readShoeSystem(raw: unknown, argument: string): Outcome<ShoeSystem | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  if (scalar.value === null || scalar.value === 0) return succeed(null);
  const system = SYSTEM_OF.get(nameKey(String(scalar.value)));
  if (system !== undefined) return succeed(system);
  const expected = '"EU", "UK", "US men", "US women" or "Mondopoint"';
  return fail("argument-not-usable", { argument, given: showGiven(scalar.value), expected });
}
