import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { defineRule } from "../defineRule";
import { isFarOff } from "../isFarOff";
import { moneyIn } from "../moneyIn";
import { textIn } from "../textIn";

// Common practice, no source: how it is noted that a deposit came back, in the five languages of the headings.
const CAME_BACK =
  /\b(?:deposit|d[eé]p[oô]t|caution|dep[oó]sito|fianza|cauzione|kaution|pfand)\b.*\b(?:back|returned|refunded|released|rendue?|rembours[eé]e?|devuelt[oa]|restituit[oa]|zur[uü]ck|erstattet)\b|\b(?:got|had|received) (?:the )?deposit\b/i;

/**
 * A row has no place for the day a deposit came back, so a note of it settles the matter, as clearing the amount does. Only for
 * a month after the return: what nobody asked for by then is settled otherwise, and old jobs would fill the list.
 */
export const depositNotBack = defineRule({
  id: "depositNotBack",
  about: "A deposit still stands in the row of a piece that has come back.",
  why: "A deposit that nobody asks for stays with the lender.",
  severity: "note",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["deposit", "back"],
  messages: {
    held: "Back {{back}}, and a deposit of {{deposit}} still stands here. Ask for it, then clear it or note that it came back.",
  },
  check(row, report, facts) {
    const deposit = moneyIn(row, "deposit");
    if (deposit.is !== "number" || deposit.amount <= 0) return;
    const loan = facts.loan(row);
    if (loan === null || loan.isSettled || loan.back === null || loan.held > 0 || loan.back > facts.asOf) return;
    if (facts.asOf - loan.back > 31 || isFarOff(loan.back, facts.asOf)) return;
    if (CAME_BACK.test(textIn(row, "note") ?? "")) return;
    const data = { back: isoFromSerial(loan.back), deposit: deposit.amount };
    report({ row, field: "deposit", messageId: "held", data });
  },
});
