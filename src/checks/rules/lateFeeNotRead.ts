import { showGiven } from "../../domain/showGiven";
import { isUndecided } from "../../sheet/isUndecided";
import { readLateCharge } from "../../sheet/readLateCharge";
import { readMoney } from "../../sheet/readMoney";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { isTyped } from "../isTyped";
import { replaceCell } from "../replaceCell";

// Common practice, no source: nothing is asked, or it is agreed when it comes to that.
const NONE_ASKED =
  /^(?:no|nil|none|free|waived?|(?:no|without) (?:late )?fees?|n\/?a|(?:as|to be) (?:agreed|discussed)|by agreement|negotiable|on request|sans frais|aucuns?|keine|nessun[ao]?|ningun[ao]?|nach absprache)\b/;

export const lateFeeNotRead = defineRule({
  id: "lateFeeNotRead",
  about: "A lender's late fee that does not say how much, and whether by the day or once.",
  why: "What being late costs can then not be worked out by LATEFEE when a return must be put off.",
  severity: "note",
  fixable: false,
  scope: "cell",
  tables: ["lenders"],
  fields: { lenders: ["lateFee"] },
  messages: {
    notRead: '"{{given}}" cannot be counted with. Write for example "2% a day", "5 a day" or "10% once".',
    bareAmount: '"{{given}}" could be asked by the day or once. Write which.',
  },
  check(row, field, report) {
    const cell = cellIn(row, field);
    if (cell === null || typeof cell === "object" || readLateCharge(cell, "").ok) return;
    const text = typeof cell === "string" ? cell.trim() : String(cell);
    if (isUndecided(text) || NONE_ASKED.test(text.toLowerCase())) return;
    const money = readMoney(cell, "");
    if (!money.ok || money.value === null || money.value.amount < 0)
      return report({ row, field, messageId: "notRead", data: { given: showGiven(cell) } });
    const readings =
      typeof cell === "number"
        ? [`${text} a day`, `${text}% a day`, `${text} once`]
        : [`${text} a day`, `${text} once`];
    const suggestions = isTyped(row, field)
      ? readings.map((reading) => ({ label: `Write "${reading}"`, edits: [replaceCell(row, field, reading)] }))
      : [];
    report({ row, field, messageId: "bareAmount", data: { given: showGiven(cell) }, suggestions });
  },
});
