import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { isFarOff } from "../isFarOff";

export const backInFuture = defineRule({
  id: "backInFuture",
  about: "A Back date that is still to come.",
  why: "Back says that a piece was handed over; until that day it goes on counting as out.",
  severity: "note",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["back"],
  messages: {
    toCome: "Back {{back}} is after {{asOf}}, so the piece still counts as out. Type it on the day it is handed over.",
  },
  check(row, report, facts) {
    const back = dayIn(row, "back");
    if (back === null || back <= facts.asOf || isFarOff(back, facts.asOf)) return;
    const out = dayIn(row, "out");
    if (out !== null && back < out) return;
    report({
      row,
      field: "back",
      messageId: "toCome",
      data: { back: isoFromSerial(back), asOf: isoFromSerial(facts.asOf) },
    });
  },
});
