import { lookKey } from "../../sheet/lookKey";
import { cellIn } from "../cellIn";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { lookName } from "../lookName";
import { textIn } from "../textIn";

/** Reported once at least half of the looks have pieces: before that the looks are still being made up. */
export const lookWithoutPieces = defineRule({
  id: "lookWithoutPieces",
  about: "A look that no piece names, when most others have theirs.",
  why: "The look is called and there is nothing on the rail for it.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["pieces", "looks"],
  reads: { pieces: ["look", "piece"] },
  messages: {
    empty: "No piece names look {{look}}. Give its pieces this look, or take the look out.",
  },
  check(workbook, report, facts) {
    const named = facts.lookPieces();
    const listed = [...(facts.looks()?.keys() ?? [])];
    if (listed.filter((key) => named.has(key)).length * 2 < listed.length) return;
    for (const table of workbook.tables) {
      if (table.kind !== "looks" || table.columnOf["look"] === undefined) continue;
      for (const index of table.dataRows) {
        const row = { table, row: index };
        // Once the day is past there is nothing left to bring.
        const day = dayIn(row, "date");
        if (day !== null && day < facts.asOf) continue;
        const look = textIn(row, "look");
        const key = look === null ? "" : lookKey(look);
        // A Pieces column of the looks' own says what is worn.
        if (look === null || key === "" || named.has(key) || cellIn(row, "pieces") !== null) continue;
        report({ row, field: "look", messageId: "empty", data: { look: lookName(look) } });
      }
    }
  },
});
