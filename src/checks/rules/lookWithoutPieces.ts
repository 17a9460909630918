import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { looksToCome } from "../looksToCome";

/** Reported once at least half of the looks have pieces: before that the looks are still being made up. */
export const lookWithoutPieces = defineRule({
  id: "lookWithoutPieces",
  about: "A look that no piece names, when most others have theirs.",
  why: "The look is called and there is nothing on the rail for it.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["pieces", "looks"],
  reads: { pieces: ["look", "piece"] },
  messages: {
    empty: "No piece names look {{look}}. Give its pieces this look, or take the look out.",
  },
  check(workbook, report, facts) {
    const named = facts.lookPieces();
    const listed = [...(facts.looks()?.keys() ?? [])];
    if (listed.filter((key) => named.has(key)).length * 2 < listed.length) return;
    for (const { row, look, key } of looksToCome(workbook, facts.asOf)) {
      // A Pieces column of the looks' own says what is worn.
      if (named.has(key) || cellIn(row, "pieces") !== null) continue;
      report({ row, field: "look", messageId: "empty", data: { look: lookName(look) } });
    }
  },
});
