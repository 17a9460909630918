import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { chaseReason } from "../../domain/loans/chaseReason";
import { chaseDaysFor } from "../chaseDaysFor";
import { defineRule } from "../defineRule";
import { forgottenDays } from "../forgottenDays";
import { requestIn } from "../requestIn";

/** Only where a Collected column is kept; without one what was collected stands among the pieces. */
export const requestNotCollected = defineRule({
  id: "requestNotCollected",
  about: "A request answered with yes or in part whose need is near or past, and nothing collected.",
  why: "What was promised and not fetched is not on the rail when the look is called.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["requests"],
  uses: ["lenders", "notes"],
  reads: { notes: ["closedDays"] },
  needs: ["neededBy", "collected"],
  messages: {
    near: "Needed by {{needed}} and not collected. Fetch it, or type the day it was fetched.",
    past: "Needed by {{needed}}, which is past, and not collected. Type the day it was fetched, or no as the answer.",
  },
  check(row, report, facts) {
    const days = chaseDaysFor(row, facts);
    const request = requestIn(row);
    const { neededBy } = request;
    if (days === null || typeof neededBy !== "number" || neededBy < facts.asOf - forgottenDays) return;
    if (chaseReason(request, days) !== "not collected") return;
    const messageId = neededBy < facts.asOf ? "past" : "near";
    report({ row, field: "collected", messageId, data: { needed: isoFromSerial(neededBy) } });
  },
});
