import type { Outcome } from "../../domain/outcome";
import { sayProblem } from "../../domain/wording";
import { readDegrees } from "../../sheet/readDegrees";
import { readOpening } from "../../sheet/readOpening";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

/** Minutes and days have rules of their own. */
export const stopCellNotRead = defineRule({
  id: "stopCellNotRead",
  about: "Opening times, a cut-off or a latitude or longitude of a stop that cannot be read.",
  why: "A stop whose times or place are not known cannot be put into the order of a run.",
  severity: "error",
  fixable: false,
  scope: "row",
  tables: ["stops"],
  needs: ["stop"],
  messages: {
    notRead: "{{sentence}}",
  },
  check(row, report) {
    const cellOf = (field: string): unknown => cellIn(row, field) || null;
    const nameOf = (field: string): string => row.table.headings[row.table.columnOf[field] ?? -1] ?? field;
    const [open, close] = [cellOf("open"), cellOf("close")];
    tell("open", open, () => readOpening(open, null, nameOf("open"), nameOf("close")));
    // Times of Close may be a list as long as that of Open.
    tell("close", close, () => {
      const both = readOpening(open, close, nameOf("open"), nameOf("close"));
      return both.ok || readOpening(open, null, "", "").ok ? both : { ok: true, value: null };
    });
    for (const field of ["receivesUntil", "cutOff"])
      tell(field, cellOf(field), (cell) => readTimeOfDay(cell, nameOf(field)));
    tell("latitude", cellOf("latitude"), (cell) => readDegrees(cell, nameOf("latitude"), 90));
    tell("longitude", cellOf("longitude"), (cell) => readDegrees(cell, nameOf("longitude"), 180));

    function tell(field: string, cell: unknown, read: (cell: unknown) => Outcome<unknown>): void {
      const outcome: Outcome<unknown> = cell === null ? { ok: true, value: null } : read(cell);
      if (outcome.ok || outcome.problem.reason === "error-in-cell") return;
      report({ row, field, messageId: "notRead", data: { sentence: sayProblem(outcome.problem) } });
    }
  },
});
