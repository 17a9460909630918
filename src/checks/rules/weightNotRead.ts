import { showGiven } from "../../domain/showGiven";
import { isUndecided } from "../../sheet/isUndecided";
import { readWeight } from "../../sheet/readWeight";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

export const weightNotRead = defineRule({
  id: "weightNotRead",
  about: "A weight that cannot be read, or whose unit is missing where it could be two weights.",
  why: "What is to be carried in one go, and what a bag weighs, is worked out from it.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces"],
  fields: { pieces: ["weight"] },
  messages: {
    noWeight: '"{{given}}" is not a weight. Type it like 1.2 kg, 800 g or 2 lb 3 oz.',
    twoWeights: '"{{given}}" could be {{first}} or {{second}}. Type it with its unit, like 1.2 kg.',
    open: '"{{given}}" is not a weight. Leave the cell blank, and a typical weight for the kind is used.',
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (cell === null || typeof cell === "object") return;
    // Below 0 is the business of the rule about such numbers.
    if (typeof cell === "number" && cell < 0) return;
    if (typeof cell === "string" && isUndecided(cell)) {
      const suggestions = isTyped(row, field)
        ? [{ label: "Clear the cell", edits: [replaceCell(row, field, null)] }]
        : [];
      return report({ row, field, messageId: "open", data: { given: showGiven(cell) }, suggestions });
    }
    const weight = readWeight(cell, "");
    if (weight.ok || (typeof cell === "string" && /^\s*[-−]\s*[\d.,]+\s*$/.test(cell))) return;
    if (weight.problem.reason === "number-ambiguous") {
      const { given, first, second } = weight.problem.facts;
      return report({ row, field, messageId: "twoWeights", data: { given, first, second } });
    }
    report({ row, field, messageId: "noWeight", data: { given: showGiven(cell) } });
  },
});
