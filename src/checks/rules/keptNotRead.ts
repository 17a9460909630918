import { showGiven } from "../../domain/showGiven";
import { readKept } from "../../sheet/readKept";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

/** What is not decided yet is no amount either; a blank says that nothing is kept. */
export const keptNotRead = defineRule({
  id: "keptNotRead",
  about: "Kept on a receipt says neither yes nor no nor an amount.",
  why: "What is still to come back from the shop cannot be worked out.",
  severity: "error",
  fixable: false,
  scope: "cell",
  tables: ["receipts"],
  fields: { receipts: ["kept"] },
  messages: {
    notRead: '"{{given}}" is neither yes, no nor an amount. Type one of these, or nothing while it is open.',
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (cell === null || typeof cell === "object" || readKept(cell, "").ok) return;
    report({ row, field, messageId: "notRead", data: { given: showGiven(cell) } });
  },
});
