import { showGiven } from "../../domain/showGiven";
import { readDone } from "../../sheet/readDone";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { goesBack } from "../goesBack";
import { isDoneWith } from "../isDoneWith";

export const alterationNotUndone = defineRule({
  id: "alterationNotUndone",
  about: "A piece altered for the shoot that is due soon, or went back, with the alteration not noted as undone.",
  why: "A hem left up or a seam left in is damage to its lender, who may charge the piece.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["alteration", "alterationUndone"],
  messages: {
    due: "Due {{day}}, and the alteration ({{alteration}}) is not undone. Undo it before it goes, and note that it is.",
    back: "Went back {{day}} with the alteration ({{alteration}}) not noted as undone. Note that it was, or tell the lender.",
  },
  check(row, report, facts) {
    const cell = cellIn(row, "alteration");
    if (cell === null || typeof cell === "object" || readDone(cell, "") !== true) return;
    if (isDoneWith(row, "alterationUndone")) return;
    const going = goesBack(row, facts);
    if (going === null) return;
    const alteration = typeof cell === "string" && /\p{L}{2}/u.test(cell) ? showGiven(cell) : "noted";
    report({
      row,
      field: "alterationUndone",
      messageId: going.messageId,
      data: { day: going.day, alteration },
    });
  },
});
