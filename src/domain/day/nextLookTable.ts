import type { ResultTable } from "../resultTable";
import type { NextLook } from "./nextLook";

/** The next look as a table of one row; the headings alone where there is none. */
export function nextLookTable(next: NextLook | null): ResultTable {
  return {
    headings: ["Look", "Talent", "Change from", "Minutes"],
    formats: ["as is", "as is", "time", "as is"],
    rows:
      next === null
        ? []
        : [[next.planned.look.label, next.planned.look.talentText, next.planned.changeFrom, next.minutesUntilCalled]],
  };
}
