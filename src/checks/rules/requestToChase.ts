import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { chaseReason } from "../../domain/loans/chaseReason";
import { chaseDaysFor } from "../chaseDaysFor";
import { defineRule } from "../defineRule";
import { forgottenDays } from "../forgottenDays";
import { holdsSomething } from "../holdsSomething";
import { requestIn } from "../requestIn";

export const requestToChase = defineRule({
  id: "requestToChase",
  about: "A request that has waited two working days and more for its answer, or was not sent though the need is near.",
  why: "A lender who was never chased has lent the piece to somebody else by the day of the shoot.",
  severity: "note",
  fixable: false,
  scope: "row",
  tables: ["requests"],
  uses: ["lenders", "notes"],
  reads: { notes: ["closedDays"] },
  needs: ["asked", "answer"],
  messages: {
    unanswered: "Asked {{asked}} and not answered. Ask again.",
    needPast: 'Asked {{asked}}, needed by {{needed}}, and not answered. Ask again, or write "no" as the answer.',
    notAsked: "Needed by {{needed}} and not asked for yet. Ask, and type the day.",
  },
  check(row, report, facts) {
    const days = chaseDaysFor(row, facts);
    if (days === null) return;
    const request = requestIn(row);
    const asked = typeof request.asked === "number" ? request.asked : null;
    const needed = typeof request.neededBy === "number" ? request.neededBy : null;
    if ((needed ?? asked ?? 0) < facts.asOf - forgottenDays) return;
    if (chaseReason(request, days) === "unanswered" && asked !== null) {
      const data = { asked: isoFromSerial(asked) };
      if (needed === null || needed >= facts.asOf) report({ row, field: "answer", messageId: "unanswered", data });
      else report({ row, field: "answer", messageId: "needPast", data: { ...data, needed: isoFromSerial(needed) } });
      return;
    }
    if (needed === null || needed > days.lastNear || holdsSomething(row, "asked")) return;
    if (request.collected === true || request.answered !== null || request.answer !== null) return;
    report({ row, field: "asked", messageId: "notAsked", data: { needed: isoFromSerial(needed) } });
  },
});
