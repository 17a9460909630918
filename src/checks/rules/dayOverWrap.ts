import { minutesSpareAtWrap } from "../../domain/day/minutesSpareAtWrap";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { sayClock } from "../sayClock";
import { sayCount } from "../sayCount";

/** The day is planned as DAYPLAN does, with the people its own row gives. A day that is past is over. */
export const dayOverWrap = defineRule({
  id: "dayOverWrap",
  about: "A day whose looks do not end by its wrap.",
  why: "What runs over is paid as overtime, dropped, or shot in a hurry.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["looks", "day"],
  messages: {
    over: "The last shot ends at {{ends}}, {{minutes}} after wrap, with {{dressers}} and {{chairs}}. Drop or shorten a look, or move the wrap.",
  },
  check(_workbook, report, facts) {
    for (const { dayRow, date, isCallSaid, crew, plan } of facts.days()) {
      if (dayRow === null || !isCallSaid || !plan.ok || (date !== null && date < facts.asOf)) continue;
      const wrap = readTimeOfDay(cellIn(dayRow, "wrap"), "");
      if (!wrap.ok || wrap.value === null) continue;
      const spare = minutesSpareAtWrap(plan.value, wrap.value);
      if (!spare.ok || spare.value >= 0) continue;
      const data = {
        ends: sayClock(plan.value.ends),
        minutes: sayCount(Math.ceil(-spare.value), "minute"),
        dressers: sayCount(crew.dressers, "dresser"),
        chairs: sayCount(crew.chairs, "chair"),
      };
      report({ row: dayRow, field: "wrap", messageId: "over", data });
    }
  },
});
