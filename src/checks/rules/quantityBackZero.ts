import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { readQuantity } from "../../sheet/readQuantity";
import { cellIn } from "../cellIn";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

export const quantityBackZero = defineRule({
  id: "quantityBackZero",
  about: "Quantity back is 0 although the piece has a Back date.",
  why: "A 0 counts as all came back, since some workbooks show a blank so; whoever meant none loses sight of the piece.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["quantityBack", "back"],
  messages: {
    zero: "0 back although Back is {{back}}: it counts as all back. Say how many came, or clear Back if none did.",
  },
  check(row, report) {
    const back = dayIn(row, "back");
    if (cellIn(row, "quantityBack") !== 0 || back === null || !isTyped(row, "quantityBack")) return;
    const quantity = readQuantity(cellIn(row, "quantity"), "");
    const all = quantity.ok ? quantity.value || 1 : null;
    const suggestions = [];
    if (all !== null) {
      suggestions.push({ label: `All came back: make it ${all}`, edits: [replaceCell(row, "quantityBack", all)] });
    }
    if (isTyped(row, "back")) {
      const edits = [replaceCell(row, "back", null), replaceCell(row, "quantityBack", null)];
      suggestions.push({ label: "None came back: clear Back and Quantity back", edits });
    }
    report({ row, field: "quantityBack", messageId: "zero", data: { back: isoFromSerial(back) }, suggestions });
  },
});
