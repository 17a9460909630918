import type { Problem } from "../problem";
import type { Look } from "./look";
import { sayLook } from "./sayLook";

/** The problem where a Fixed place does not exist or is given twice, or null. The plan keeps the order given; Fixed binds only who reorders it. */
export function fixedProblem(looks: readonly Look[]): Problem | null {
  const taken = new Set<number>();
  for (const look of looks) {
    if (look.fixed === null) continue;
    const place = look.fixed === "first" ? 1 : look.fixed === "last" ? looks.length : look.fixed;
    const exists = Number.isInteger(place) && place >= 1 && place <= looks.length;
    if (exists && !taken.has(place)) {
      taken.add(place);
      continue;
    }
    const expected = exists
      ? "a place that no other look has"
      : `first, last or a whole number from 1 to ${looks.length}, the number of looks`;
    const facts = { argument: `Fixed of ${sayLook(look.label)}`, given: String(look.fixed), expected };
    return { reason: "argument-not-usable", facts };
  }
  return null;
}
