import { minutesSpareAtWrap } from "../../domain/day/minutesSpareAtWrap";
import { defineRule } from "../defineRule";
import { sayClock } from "../../domain/sayClock";
import { sayCount } from "../sayCount";

/** The day is planned as DAYPLAN does, with the people that the workbook names. A day that is past is over. */
export const dayOverWrap = defineRule({
  id: "dayOverWrap",
  about: "A day whose looks do not end by its wrap.",
  why: "What runs over is paid as overtime, dropped, or shot in a hurry.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["looks", "day"],
  uses: ["notes"],
  reads: { notes: ["crew", "days"] },
  messages: {
    over: "The last shot ends at {{ends}}, {{minutes}} after wrap, with {{dressers}} and {{chairs}}. Drop or shorten a look, or move the wrap.",
  },
  check(_workbook, report, facts) {
    for (const { date, said, people, plan } of facts.days()) {
      if (said.call === null || said.wrap === null || !plan.ok || (date !== null && date < facts.asOf)) continue;
      const spare = minutesSpareAtWrap(plan.value, said.wrap.value);
      if (!spare.ok || spare.value >= 0) continue;
      const data = {
        ends: sayClock(plan.value.ends),
        minutes: sayCount(Math.ceil(-spare.value), "minute"),
        dressers: sayCount(people.crew.dressers, "dresser"),
        chairs: sayCount(people.crew.chairs, "chair"),
      };
      report({ cell: said.wrap, messageId: "over", data });
    }
  },
});
