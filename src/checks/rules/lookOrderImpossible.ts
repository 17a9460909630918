import { sayLook } from "../../domain/day/sayLook";
import type { Reason } from "../../domain/problem";
import { sayProblem } from "../../domain/wording";
import type { CheckedDay } from "../checkedDay";
import type { CheckedRow } from "../checkedRow";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { textIn } from "../textIn";

/** Rules of their own find these. */
const REPORTED_ELSEWHERE: readonly Reason[] = ["look-repeated", "looks-in-a-circle"];

/** A circle in After and a doubled look number have rules of their own. */
export const lookOrderImpossible = defineRule({
  id: "lookOrderImpossible",
  about:
    "An order of looks that cannot be kept: After names a later look or one that is not there, or two share a fixed place.",
  why: "The day cannot be planned until the order can be kept.",
  severity: "error",
  fixable: false,
  scope: "workbook",
  tables: ["looks", "day"],
  uses: ["notes"],
  reads: { notes: ["crew", "days"] },
  messages: {
    impossible: "{{sentence}}",
  },
  check(_workbook, report, facts) {
    for (const day of facts.days()) {
      if (day.plan.ok || REPORTED_ELSEWHERE.includes(day.plan.problem.reason)) continue;
      const sentence = sayProblem(day.plan.problem);
      const row = rowMeant(day, sentence);
      const fixed = /^Fixed /.test(sentence);
      report({ row, field: fixed ? "fixed" : "after", messageId: "impossible", data: { sentence } });
    }
  },
});

/** The first row of the day whose look the sentence names and that says something of its order. */
function rowMeant({ table, date }: CheckedDay, sentence: string): CheckedRow {
  const rows = table.dataRows.map((row) => ({ table, row }));
  const ofDay = rows.filter((row) => date === null || cellIn(row, "date") === date);
  const said = ofDay.filter((row) => cellIn(row, "after") !== null || cellIn(row, "fixed") !== null);
  return (
    said.find((row) => names(sentence, textIn(row, "look") ?? "")) ??
    said[0] ??
    ofDay[0] ?? { table, row: table.headingRow }
  );
}

function names(sentence: string, look: string): boolean {
  const at = sentence.indexOf(sayLook(look));
  return look !== "" && at >= 0 && !/[\p{L}\p{N}]/u.test(sentence[at + sayLook(look).length] ?? "");
}
