import { readQuantity } from "../../sheet/readQuantity";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";

export const quantityBackNoDay = defineRule({
  id: "quantityBackNoDay",
  about: "Pieces counted back without a Back date.",
  why: "Without the day nothing counts as back, and late fees go on.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["quantityBack", "back"],
  messages: {
    noDay: "{{back}} back, but Back is blank, so the row still counts as out. Type the day it came back.",
  },
  check(row, report) {
    const back = readQuantity(cellIn(row, "quantityBack"), "");
    if (!back.ok || !back.value || holdsSomething(row, "back")) return;
    report({ row, field: "back", messageId: "noDay", data: { back: back.value } });
  },
});
