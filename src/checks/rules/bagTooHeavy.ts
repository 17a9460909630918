import { cautionForCarrying } from "../../domain/carry/cautionForCarrying";
import { sayCarryingCaution } from "../../domain/carry/sayCarryingCaution";
import { bagLoads } from "../bagLoads";
import { defineRule } from "../defineRule";

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
    for (const { rows, bag, grams } of bagLoads(table, facts)) {
      const caution = cautionForCarrying(grams);
      if (caution === null) continue;
      const data = { bag, sentence: sayCarryingCaution(caution) };
      report({ row: rows[0]!, field: "bag", messageId: "tooHeavy", data });
    }
  },
});
