import { gramsPerUnit } from "../../sheet/gramsPerUnit";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { heaviestPieceGrams } from "../heaviestPieceGrams";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

/** A bare number counts in the unit of its heading, else in kilograms. */
export const weightUnlikely = defineRule({
  id: "weightUnlikely",
  about: "A weight without a unit that is far too heavy for one piece, most likely grams.",
  why: "Read as kilograms it makes a bag that nobody can carry, and hides the real one.",
  severity: "warning",
  fixable: false,
  scope: "cell",
  tables: ["pieces"],
  fields: { pieces: ["weight"] },
  messages: {
    tooHeavy: '{{number}} reads as {{number}} {{unit}} for one piece. If it is grams, type "{{number}} g".',
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (typeof cell !== "number") return;
    const unit = row.table.hintOf?.[field]?.unit ?? "kg";
    if (cell * (gramsPerUnit(unit) ?? 1000) <= heaviestPieceGrams || unit === "g") return;
    const text = `${cell} g`;
    const suggestions = isTyped(row, field)
      ? [{ label: `Write "${text}"`, edits: [replaceCell(row, field, text)] }]
      : [];
    report({ row, field, messageId: "tooHeavy", data: { number: cell, unit }, suggestions });
  },
});
