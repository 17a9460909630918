import { gramsPerUnit } from "../../sheet/gramsPerUnit";
import { readGrams } from "../../sheet/readGrams";
import { bagLoads } from "../bagLoads";
import type { CheckedRow } from "../checkedRow";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

const GRAMS_PER_KG = 1000;

/** The limit is that of the bag's own rows, the least where they say several; else the one stated beside the tables. Equal is not over. */
export const bagOverLimit = defineRule({
  id: "bagOverLimit",
  about: "A bag that weighs more than the limit that the sheet states for one bag.",
  why: "A bag over its limit is refused by the courier or the airline, or hurts whoever lifts it; a limit just kept is no safe load either.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["pieces"],
  uses: ["notes"],
  reads: { notes: ["bagLimit"] },
  needs: ["bag"],
  messages: {
    over: "Bag {{bag}} weighs {{weight}} kg, {{over}} kg above its limit of {{limit}} kg. Take some out, or open another bag.",
  },
  check(table, report, facts) {
    const stated = facts.notes.bagLimit?.grams ?? Infinity;
    if (stated === Infinity && table.columnOf["bagLimit"] === undefined) return;
    for (const { rows, bag, grams } of bagLoads(table, facts)) {
      const own = Math.min(...rows.map(limitIn));
      const limit = Math.round(own === Infinity ? stated : own);
      if (Math.round(grams) <= limit) continue;
      const kg = (some: number): string => String(Math.round(some) / GRAMS_PER_KG);
      report({
        row: rows[0]!,
        field: "bag",
        messageId: "over",
        data: { bag, weight: kg(grams), over: kg(Math.round(grams) - limit), limit: kg(limit) },
      });
    }
  },
});

/** The limit in a row, a bare number in the unit of its heading; Infinity where there is none that can be read. */
function limitIn(row: CheckedRow): number {
  const unit = row.table.hintOf?.["bagLimit"]?.unit ?? "kg";
  const grams = readGrams(cellIn(row, "bagLimit"), "", gramsPerUnit(unit) ?? GRAMS_PER_KG);
  return grams.ok && grams.value !== null && grams.value > 0 ? grams.value : Infinity;
}
