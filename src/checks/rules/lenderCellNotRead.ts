import { isProblem } from "../../domain/isProblem";
import type { Problem } from "../../domain/problem";
import { sayProblem } from "../../domain/wording";
import { isUndecided } from "../../sheet/isUndecided";
import { readLenders } from "../../sheet/readLenders";
import { cellIn } from "../cellIn";
import { defineRule } from "../defineRule";

const FIELDS = ["closedWeekdays", "courierDays", "opening", "cutOff", "receivesUntil"] as const;

// Common practice, no source: a door with no hours of its own.
const BY_APPOINTMENT =
  /\b(?:appointment|appt|request|arrangement|call first|ring first|phone first|rendez-?vous|rdv|cita|appuntamento|nach absprache|nach vereinbarung|termin)\b/i;

/** The terms have a rule of their own. "By appointment" is right: such a lender has no hours to keep. */
export const lenderCellNotRead = defineRule({
  id: "lenderCellNotRead",
  about: "Closed weekdays, courier days or opening hours of a lender that cannot be read.",
  why: "Due days and the last day to send are worked out from them.",
  severity: "warning",
  fixable: false,
  scope: "table",
  tables: ["lenders"],
  needs: [],
  messages: {
    notRead: "{{sentence}}",
    neverOpen: "Closed on every weekday, so nothing could be returned. Name the days on which the lender is closed.",
  },
  check(table, report) {
    for (const lender of readLenders(table)) {
      const row = { table, row: lender.row };
      if (lender.closedWeekdays === 0b1111111) {
        report({ row, field: "closedWeekdays", messageId: "neverOpen", data: {} });
      }
      for (const read of FIELDS) {
        const problem = lender[read];
        if (!isProblem(problem) || problem.reason === "error-in-cell") continue;
        const fields = read === "opening" ? ["open", "close"] : [read];
        const texts = fields.map((field) => cellIn(row, field)).filter((cell) => typeof cell === "string");
        if (texts.some((text) => isUndecided(text) || BY_APPOINTMENT.test(text))) continue;
        const isClose =
          read === "opening" && "argument" in problem.facts && problem.facts.argument.startsWith(headingOf("close"));
        const field = read === "opening" ? (isClose ? "close" : "open") : read;
        // The finding says which row it is, counted as the sheet counts and not from the table's first.
        const named = { ...problem, facts: { ...problem.facts, argument: headingOf(field) } } as Problem;
        report({ row, field, messageId: "notRead", data: { sentence: sayProblem(named) } });
      }
    }

    function headingOf(field: string): string {
      return table.headings[table.columnOf[field] ?? -1] ?? field;
    }
  },
});
