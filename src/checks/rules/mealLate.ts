import { defineRule } from "../defineRule";
import { sayClock } from "../../domain/sayClock";
import { sayCount } from "../sayCount";

/** Only where the workbook says after how many hours the meal is due. The plan stops for it at the latest moment at which nothing is under way. */
export const mealLate = defineRule({
  id: "mealLate",
  about: "A day whose meal cannot begin by the hour it is due.",
  why: "A late meal is a penalty under many labour rules and agreements, and a crew that works hungry.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["looks", "day"],
  uses: ["notes"],
  reads: { notes: ["crew", "days"] },
  messages: {
    late: "The meal is due at {{due}}, but the first moment without work under way is {{from}}, {{minutes}} later. Shorten what comes before, or part it.",
  },
  check(_workbook, report, facts) {
    for (const { date, said, people, plan } of facts.days()) {
      const meal = plan.ok ? plan.value.meal : null;
      if (people.mealPlace === null || said.call === null || meal === null || meal.minutesLate === 0) continue;
      if (date !== null && date < facts.asOf) continue;
      const data = {
        due: sayClock(meal.due),
        from: sayClock(meal.from),
        minutes: sayCount(Math.ceil(meal.minutesLate), "minute"),
      };
      report({ cell: people.mealPlace, messageId: "late", data });
    }
  },
});
