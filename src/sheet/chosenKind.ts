import type { AreaKind } from "./areaKinds";
import { sameHeading } from "./sameHeading";

/**
 * The kind an area was given by hand: null where it was set aside, undefined where nobody chose.
 *
 * More than half of the headings it had then must still be there, so that a column may be renamed or added; of several
 * choices the one with most headings in common counts, the last of equals.
 */
export function chosenKind(headings: readonly string[], choices: readonly AreaKind[]): AreaKind["kind"] | undefined {
  let best: AreaKind | undefined;
  let bestShared = 0;
  for (const choice of choices) {
    const shared = choice.headings.filter((chosen) => headings.some((heading) => sameHeading(heading, chosen))).length;
    if (shared * 2 <= choice.headings.length || shared < bestShared) continue;
    best = choice;
    bestShared = shared;
  }
  return best?.kind;
}
