import type { Problem } from "../problem";
import type { Look } from "./look";
import { lookCircle } from "./lookCircle";
import { sayLook } from "./sayLook";

/**
 * The problem where After names a look that is not there, goes round in a circle, or is contradicted by the order; or null.
 *
 * A look that has been shot already is past contradicting.
 */
export function afterProblem(inOrder: readonly Look[]): Problem | null {
  const placeOf = new Map(inOrder.map((look, place) => [look.key, place]));
  for (const look of inOrder) {
    const unknown = look.after.find((key) => !placeOf.has(key));
    if (unknown === undefined) continue;
    const facts = {
      argument: `After of ${sayLook(look.label)}`,
      given: unknown,
      expected: "the number of a look of this day",
    };
    return { reason: "argument-not-usable", facts };
  }
  const circle = lookCircle(inOrder);
  if (circle !== null) {
    const looks = circle.map((look) => sayLook(look.label)).join(" after ");
    return { reason: "looks-in-a-circle", facts: { looks } };
  }
  for (const [place, look] of inOrder.entries()) {
    const late = look.shotAt === null ? look.after.find((key) => placeOf.get(key)! > place) : undefined;
    if (late === undefined) continue;
    const before = inOrder[placeOf.get(late)!]!;
    return { reason: "look-before-its-after", facts: { look: sayLook(look.label), after: sayLook(before.label) } };
  }
  return null;
}
