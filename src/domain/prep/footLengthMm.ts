import { systems } from "../../../shared/shoe-sizes.json";
import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import type { ShoeSystem } from "./shoeSystem";

/** The foot length that a size stands for, in mm, approximate; argument-not-usable outside the published table. */
export function footLengthMm(size: number, system: ShoeSystem, argument: string): Outcome<number> {
  const { perMm, plus, least, most } = systems[system];
  if (size >= least && size <= most) return succeed((size - plus) / perMm);
  const expected = `a size from ${least} to ${most}, as ${system} sizes of adults run`;
  return fail("argument-not-usable", { argument, given: String(size), expected });
}
