import { defineRule } from "../defineRule";
import { sayClock } from "../sayClock";
import { sayCount } from "../sayCount";

/** Only where the day's row says after how many hours the meal is due. The plan stops for it at the latest moment at which nothing is under way. */
export const mealLate = defineRule({
  id: "mealLate",
  about: "A day whose meal cannot begin by the hour it is due.",
  why: "A late meal is a penalty under many labour rules and agreements, and a crew that works hungry.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["looks", "day"],
  messages: {
    late: "The meal is due at {{due}}, but the first moment without work under way is {{from}}, {{minutes}} later. Shorten what comes before, or part it.",
  },
  check(_workbook, report, facts) {
    for (const { dayRow, date, isCallSaid, plan } of facts.days()) {
      const meal = plan.ok ? plan.value.meal : null;
      if (dayRow === null || !isCallSaid || meal === null || meal.minutesLate === 0) continue;
      if (date !== null && date < facts.asOf) continue;
      const data = {
        due: sayClock(meal.due),
        from: sayClock(meal.from),
        minutes: sayCount(Math.ceil(meal.minutesLate), "minute"),
      };
      report({ row: dayRow, field: "meal", messageId: "late", data });
    }
  },
});
