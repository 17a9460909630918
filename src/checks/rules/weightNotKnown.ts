import { pieceGrams } from "../../domain/carry/pieceGrams";
import { isProblem } from "../../domain/isProblem";
import { showGiven } from "../../domain/showGiven";
import { readCarriedPieces } from "../../sheet/readCarriedPieces";
import { defineRule } from "../defineRule";

/** Reported once more than half of the pieces have a weight or a kind that is known: before that nobody means to weigh them. */
export const weightNotKnown = defineRule({
  id: "weightNotKnown",
  about:
    "A piece that is still to be carried, with neither a weight nor a kind of known weight, when most others have one.",
  why: "Nothing tells what there is to carry, and what goes into which bag, while one piece cannot be weighed.",
  severity: "note",
  fixable: false,
  scope: "table",
  tables: ["pieces"],
  needs: ["weight"],
  messages: {
    noKind: "Neither a weight nor a kind. Type what the piece weighs, or a kind such as coat, dress, shoes or bag.",
    otherKind:
      '"{{given}}" has no typical weight. Type what the piece weighs, or a kind such as coat, dress, shoes or bag.',
  },
  check(table, report, facts) {
    const pieces = readCarriedPieces(table, GRAMS_PER_KG);
    const unknown: { readonly row: number; readonly given: string }[] = [];
    for (const [index, row] of table.dataRows.entries()) {
      const piece = pieces.at(index);
      // A cell that cannot be read has a finding of its own.
      if (piece.grams === null && (piece.kind === null || piece.kind === "other") && isProblem(pieceGrams(piece)))
        unknown.push({ row, given: piece.named });
    }
    if (unknown.length * 2 >= table.dataRows.length) return;
    for (const { row, given } of unknown) {
      const checked = { table, row };
      const loan = facts.loan(checked);
      if (loan !== null && (loan.back !== null || loan.isSettled)) continue;
      if (given === "") report({ row: checked, field: "weight", messageId: "noKind", data: {} });
      else report({ row: checked, field: "weight", messageId: "otherKind", data: { given: showGiven(given) } });
    }
  },
});

const GRAMS_PER_KG = 1000;
