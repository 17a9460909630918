import { readKind } from "../../sheet/readKind";
import { defineRule } from "../defineRule";
import { goesBack } from "../goesBack";
import { isDoneWith } from "../isDoneWith";
import { textIn } from "../textIn";

/** Soles are taped for the shoot and the tape comes off before the return: common practice, no source. */
export const tapeNotOff = defineRule({
  id: "tapeNotOff",
  about: "Shoes that are due soon, or went back, with the tape not noted as taken off the soles.",
  why: "Tape left on marks the soles, and marked soles are worn shoes that somebody pays for.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["tapeOff"],
  messages: {
    due: "Due {{day}}, and the tape is not noted as off. Take it off before they go, and tick it (n/a where none was on).",
    back: "Went back {{day}} with the tape not noted as off. Tick it if it was, or tell the lender (n/a where none was on).",
  },
  check(row, report, facts) {
    if (isDoneWith(row, "tapeOff")) return;
    const text = textIn(row, "kind") ?? textIn(row, "description");
    const kind = text === null ? null : facts.once("kind", text, () => readKind(text));
    if (kind !== "shoes" && kind !== "boots") return;
    const going = goesBack(row, facts);
    if (going !== null) report({ row, field: "tapeOff", messageId: going.messageId, data: { day: going.day } });
  },
});
