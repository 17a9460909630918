import { gramsPerUnit } from "../../sheet/gramsPerUnit";
import type { CheckedRow } from "../checkedRow";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { heaviestPieceGrams } from "../heaviestPieceGrams";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

const GRAMS_PER_KG = 1000;

/** Only where most weights with a unit are in another than kilograms: beside "1.2 kg" a bare 0.8 is plainly kilograms. */
export const weightUnitMissing = defineRule({
  id: "weightUnitMissing",
  about: "A weight without a unit among weights in grams, pounds or ounces.",
  why: "It counts as kilograms, so the total and the bags come out wrong.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["pieces"],
  needs: ["weight"],
  messages: {
    noUnit: "{{number}} has no unit and counts as kilograms, while most others are in {{unit}}. Type it with its unit.",
  },
  check(table, report) {
    if ((table.hintOf?.["weight"]?.unit ?? null) !== null) return;
    const bare: { readonly row: CheckedRow; readonly number: number }[] = [];
    const spellings = new Map<number, { readonly unit: string; count: number }>();
    for (const index of table.dataRows) {
      const row = { table, row: index };
      const cell = cellIn(row, "weight");
      if (typeof cell === "number") bare.push({ row, number: cell });
      if (typeof cell !== "string") continue;
      const unit = /\d\s*([a-z]+)\.?\s*$/i.exec(cell)?.[1] ?? "";
      const grams = gramsPerUnit(unit);
      if (grams === null) continue;
      const seen = spellings.get(grams) ?? { unit, count: 0 };
      seen.count++;
      spellings.set(grams, seen);
    }
    const [most] = [...spellings].sort(([, one], [, other]) => other.count - one.count);
    if (most === undefined || most[0] === GRAMS_PER_KG) return;
    const { unit } = most[1];
    for (const { row, number } of bare) {
      // A number that no piece weighs in kilograms has a finding of its own; a 0 is a blank.
      if (number <= 0 || number * GRAMS_PER_KG > heaviestPieceGrams) continue;
      const suggestions = isTyped(row, "weight")
        ? [{ label: `Write "${number} ${unit}"`, edits: [replaceCell(row, "weight", `${number} ${unit}`)] }]
        : [];
      report({ row, field: "weight", messageId: "noUnit", data: { number, unit }, suggestions });
    }
  },
});
