import { readQuantity } from "../../sheet/readQuantity";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

export const quantityBackTooMany = defineRule({
  id: "quantityBackTooMany",
  about: "More pieces back than went out.",
  why: "One of the two was miscounted, so a piece may be missing that looks returned.",
  severity: "error",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["quantityBack"],
  messages: {
    tooMany: "{{back}} back of {{quantity}} that went out. Count again and correct one of them.",
  },
  check(row, report) {
    const back = readQuantity(cellIn(row, "quantityBack"), "");
    const quantity = readQuantity(cellIn(row, "quantity"), "");
    if (!back.ok || back.value === null || !quantity.ok) return;
    // A blank quantity is one piece, and so is a 0.
    const wentOut = quantity.value || 1;
    if (back.value <= wentOut) return;
    report({ row, field: "quantityBack", messageId: "tooMany", data: { back: back.value, quantity: wentOut } });
  },
});
