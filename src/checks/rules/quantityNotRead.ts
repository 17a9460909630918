import { showGiven } from "../../domain/showGiven";
import { readQuantity } from "../../sheet/readQuantity";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

/** "2 pcs", "x2" and "1 pair" are read as they are meant; a quantity below 0 has a rule of its own. */
export const quantityNotRead = defineRule({
  id: "quantityNotRead",
  about: "A quantity that is no whole number of pieces.",
  why: "Pieces, values and weights are multiplied by it, and a total stops at it.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["pieces"],
  fields: { pieces: ["quantity", "quantityBack"] },
  messages: {
    noQuantity: '"{{given}}" is not a whole number of pieces. Type a number like 2.',
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (cell === null || typeof cell === "object" || (typeof cell === "number" && cell < 0)) return;
    if (readQuantity(cell, "").ok || (typeof cell === "string" && /^\s*[-−]\s*\d+\s*$/.test(cell))) return;
    report({ row, field, messageId: "noQuantity", data: { given: showGiven(cell) } });
  },
});
