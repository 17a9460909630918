import { cautionForCarrying } from "../../domain/carry/cautionForCarrying";
import { sayCarryingCaution } from "../../domain/carry/sayCarryingCaution";
import { bagLoads } from "../bagLoads";
import { defineRule } from "../defineRule";

export const bagTooHeavy = defineRule({
  id: "bagTooHeavy",
  about: "A bag that weighs more than one person should lift.",
  why: "Lifting and carrying injure: the figure is for two hands, a step or two and a poor grip, no medical advice, and local rules come first.",
  severity: "note",
  fixable: false,
  scope: "table",
  tables: ["pieces"],
  needs: ["bag"],
  messages: {
    tooHeavy: "Bag {{bag}}: {{sentence}}",
  },
  check(table, report, facts) {
    for (const { rows, bag, grams } of bagLoads(table, facts)) {
      const caution = cautionForCarrying(grams);
      if (caution === null) continue;
      const data = { bag, sentence: sayCarryingCaution(caution) };
      report({ row: rows[0]!, field: "bag", messageId: "tooHeavy", data });
    }
  },
});
