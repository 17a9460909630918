import { readOpening } from "../../sheet/readOpening";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";
import { sayClock } from "../../domain/sayClock";

/** The start of a run is a stop like any other here. */
export const cutOffBeforeOpening = defineRule({
  id: "cutOffBeforeOpening",
  about: "A courier's cut-off, or a last hour for returns, that has passed before the door opens.",
  why: "Whoever comes when the door opens is too late for it, every day.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["stops", "lenders"],
  needs: ["open"],
  messages: {
    passed: "{{heading}} is {{time}}, but the door opens only at {{opens}}. Correct one of the two.",
  },
  check(row, report) {
    const opening = readOpening(cellIn(row, "open") || null, cellIn(row, "close") || null, "", "");
    if (!opening.ok || opening.value === null) return;
    const opens = Math.min(...opening.value.map(({ from }) => from));
    for (const field of ["receivesUntil", "cutOff"]) {
      const time = readTimeOfDay(cellIn(row, field) || null, "");
      if (!time.ok || time.value === null || time.value >= opens) continue;
      const heading = row.table.headings[row.table.columnOf[field] ?? -1] ?? field;
      report({
        row,
        field,
        messageId: "passed",
        data: { heading, time: sayClock(time.value), opens: sayClock(opens) },
      });
    }
  },
});
