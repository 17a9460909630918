import { cautionForCarrying } from "../../domain/carry/cautionForCarrying";
import { pieceGrams } from "../../domain/carry/pieceGrams";
import { sayCarryingCaution } from "../../domain/carry/sayCarryingCaution";
import { isProblem } from "../../domain/isProblem";
import { nameKey } from "../../sheet/nameKey";
import { readCarriedPieces } from "../../sheet/readCarriedPieces";
import type { CheckedRow } from "../checkedRow";
import { defineRule } from "../defineRule";
import { isUndecided } from "../../sheet/isUndecided";
import { textIn } from "../textIn";

/** Pieces that are back are no longer in their bag. What cannot be weighed has a finding of its own, and the bag is at least so heavy. */
export const bagTooHeavy = defineRule({
  id: "bagTooHeavy",
  about: "A bag that weighs more than one person should lift.",
  why: "Lifting and carrying injure, and a day on foot makes every bag heavier.",
  severity: "note",
  fixable: false,
  scope: "table",
  tables: ["pieces"],
  needs: ["bag"],
  messages: {
    tooHeavy: "Bag {{bag}}: {{sentence}}",
  },
  check(table, report, facts) {
    const pieces = readCarriedPieces(table, GRAMS_PER_KG);
    const bags = new Map<string, { readonly row: CheckedRow; readonly bag: string; grams: number }>();
    for (const [index, row] of table.dataRows.entries()) {
      const checked = { table, row };
      const bag = textIn(checked, "bag");
      if (bag === null || isUndecided(bag)) continue;
      const loan = facts.loan(checked);
      if (loan !== null && (loan.back !== null || loan.isSettled)) continue;
      const piece = pieces.at(index);
      const grams = pieceGrams(piece);
      if (isProblem(grams) || isProblem(piece.quantity)) continue;
      const key = nameKey(bag) || bag;
      const seen = bags.get(key) ?? { row: checked, bag, grams: 0 };
      seen.grams += grams * (piece.quantity || 1);
      bags.set(key, seen);
    }
    for (const { row, bag, grams } of bags.values()) {
      const caution = cautionForCarrying(grams);
      if (caution === null) continue;
      report({ row, field: "bag", messageId: "tooHeavy", data: { bag, sentence: sayCarryingCaution(caution) } });
    }
  },
});

const GRAMS_PER_KG = 1000;
