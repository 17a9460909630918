import type { ResultTable } from "../resultTable";
import type { PlannedDay } from "./plannedDay";
import { sayWait } from "./sayWait";

/** A plan as a table that spills, one row a look in the order they are shot. */
export function dayPlanTable(plan: PlannedDay): ResultTable {
  return {
    headings: ["Look", "Talent", "Change from", "Ready by", "Shoot from", "Shoot until", "Waits for", "Spare"],
    formats: ["as is", "as is", "time", "time", "time", "time", "as is", "as is"],
    rows: plan.looks.map((planned) => [
      planned.look.label,
      planned.look.talentText,
      planned.changeFrom,
      planned.readyBy,
      planned.shootFrom,
      planned.shootUntil,
      sayWait(planned.waitsFor),
      planned.minutesSpare,
    ]),
  };
}
