import type { Problem } from "../problem";
import type { Look } from "./look";
import { sayLook } from "./sayLook";

/** The problem where one look stands on two rows, or null. */
export function repeatedLookProblem(looks: readonly Look[]): Problem | null {
  const seen = new Set<string>();
  for (const look of looks) {
    if (seen.has(look.key)) return { reason: "look-repeated", facts: { look: sayLook(look.label) } };
    seen.add(look.key);
  }
  return null;
}
