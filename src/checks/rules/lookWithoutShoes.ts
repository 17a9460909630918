import { readKind } from "../../sheet/readKind";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { looksToCome } from "../looksToCome";
import { textIn } from "../textIn";

const ON_FEET = new Set<string>(["shoes", "boots"]);
/** Fewer pieces may be a look that is still being made up. */
const LEAST_PIECES = 2;

/** Only where most other looks have shoes: a beauty story, or shoes that are not borrowed, have none to miss. */
export const lookWithoutShoes = defineRule({
  id: "lookWithoutShoes",
  about: "A look with pieces but no shoes, when most others have theirs.",
  why: "Shoes are what is left behind, and nobody shoots barefoot unless it is meant.",
  severity: "note",
  fixable: false,
  scope: "workbook",
  tables: ["pieces", "looks"],
  reads: { pieces: ["look", "piece", "kind", "description"] },
  messages: {
    noShoes: "Look {{look}} has {{count}} pieces and no shoes. Add a pair, unless none is meant.",
  },
  check(workbook, report, facts) {
    const pieces = new Map([...facts.lookPieces()].map(([key, { rows }]) => [key, feetOf(rows, facts)]));
    const made = [...pieces.values()].filter(({ count }) => count >= LEAST_PIECES);
    // Of all others but the one without.
    if (made.filter(({ hasShoes }) => hasShoes).length * 2 <= made.length - 1) return;
    for (const { row, look, key } of looksToCome(workbook, facts.asOf)) {
      const found = pieces.get(key);
      // A kind that is not known may be a word for shoes.
      if (found === undefined || found.hasShoes || !found.isAllKnown || found.count < LEAST_PIECES) continue;
      report({ row, field: "look", messageId: "noShoes", data: { look: lookName(look), count: found.count } });
    }
  },
});

/** How many pieces a look has, whether some are for the feet, and whether the kind of each is known. */
function feetOf(
  rows: readonly CheckedRow[],
  facts: CheckFacts,
): { count: number; hasShoes: boolean; isAllKnown: boolean } {
  const kinds = rows.map((row) => {
    const thing = textIn(row, "kind") ?? textIn(row, "description") ?? "";
    return facts.once("kind", thing, () => readKind(thing));
  });
  return {
    count: rows.length,
    hasShoes: kinds.some((kind) => kind !== null && ON_FEET.has(kind)),
    isAllKnown: kinds.every((kind) => kind !== null),
  };
}
