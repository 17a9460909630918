import { showGiven } from "../../domain/showGiven";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { readDone } from "../../sheet/readDone";
import { cellIn } from "../cellIn";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";

export const settledAndBack = defineRule({
  id: "settledAndBack",
  about: "A piece that is both settled (lost, bought, gifted) and back.",
  why: "Whoever settles the job pays for a piece that was returned, or lets a lost one pass as returned.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["settled", "back"],
  messages: {
    both: 'Settled says "{{settled}}" and Back says {{back}}. Clear whichever is wrong.',
  },
  check(row, report) {
    const back = dayIn(row, "back");
    const settled = cellIn(row, "settled");
    if (back === null || settled === null || typeof settled === "object" || readDone(settled, "") !== true) return;
    // Of several pieces some may be back and the rest settled.
    const quantity = cellIn(row, "quantity");
    if (typeof quantity === "number" && quantity > 1) return;
    const shown = typeof settled === "number" && settled > 1 ? isoFromSerial(settled) : showGiven(settled);
    report({ row, field: "settled", messageId: "both", data: { settled: shown, back: isoFromSerial(back) } });
  },
});
