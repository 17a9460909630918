import { isOpenDay } from "../../domain/dates/isOpenDay";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { openDayOnOrAfter } from "../../domain/dates/openDayOnOrAfter";
import { openDayOnOrBefore } from "../../domain/dates/openDayOnOrBefore";
import { weekdayFromSerial } from "../../domain/dates/weekdayFromSerial";
import { cellName } from "../../sheet/cellName";
import { isOwnKit } from "../../sheet/isOwnKit";
import { dayIn } from "../dayIn";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { isFarOff } from "../isFarOff";
import { isTyped } from "../isTyped";
import { lenderCalendar } from "../lenderCalendar";
import { replaceCell } from "../replaceCell";
import { textIn } from "../textIn";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];

/** Only days still to come: once a piece is late, or back, the door's opening days no longer matter. */
export const dueOnClosedDay = defineRule({
  id: "dueOnClosedDay",
  about: "A due day on which the lender is closed.",
  why: "Nobody takes the piece in on that day, and the day after it is late.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["lenders", "notes"],
  reads: { notes: ["closedDays"] },
  needs: ["due", "lender"],
  messages: {
    closed: "{{due}} is a {{weekday}}, when {{lender}} is closed. Bring it back on {{before}}, or agree {{after}}.",
    onlyAfter: "{{due}} is a {{weekday}}, when {{lender}} is closed. Agree {{after}} with the lender.",
    listed:
      "{{due}} is one of the closed days listed at {{list}}. Bring it to {{lender}} on {{before}}, or agree {{after}}.",
    listedOnlyAfter: "{{due}} is one of the closed days listed at {{list}}. Agree {{after}} with {{lender}}.",
  },
  check(row, report, facts) {
    const field = holdsSomething(row, "extendedTo") ? "extendedTo" : "due";
    const due = dayIn(row, field);
    const lender = textIn(row, "lender");
    if (due === null || lender === null || due < facts.asOf || isFarOff(due, facts.asOf)) return;
    if (isOwnKit(lender)) return;
    const loan = facts.loan(row);
    if (loan === null || loan.isSettled || (loan.back !== null && loan.held === 0)) return;
    if (loan.out !== null && due < loan.out) return;
    const { closedDays } = facts.notes;
    const calendar = facts.once("lender calendar", lender, () =>
      lenderCalendar(lender, facts.lenders(), closedDays.days),
    );
    if (calendar === null || isOpenDay(due, calendar)) return;
    const before = openDayOnOrBefore(due, calendar);
    const after = openDayOnOrAfter(due, calendar);
    if (before === null || after === null) return;
    const weekday = WEEKDAYS[weekdayFromSerial(due)] ?? "";
    const said = { due: isoFromSerial(due), lender, after: isoFromSerial(after) };
    const { place } = closedDays;
    const isListed = place !== null && calendar.closedDays.includes(due);
    const list = place === null ? "" : `${place.sheetName}!${cellName(place.at.row, place.at.column)}`;
    const data = isListed ? { ...said, list } : { ...said, weekday };
    const isBeforeTooEarly = before < facts.asOf || (loan.out !== null && before <= loan.out);
    const days = isBeforeTooEarly ? [after] : [before, after];
    const suggestions = !isTyped(row, field)
      ? []
      : days.map((day) => ({
          label: `Make it ${WEEKDAYS[weekdayFromSerial(day)] ?? ""} ${isoFromSerial(day)}`,
          edits: [replaceCell(row, field, day, "yyyy-mm-dd")],
        }));
    if (isBeforeTooEarly) {
      return report({ row, field, messageId: isListed ? "listedOnlyAfter" : "onlyAfter", data, suggestions });
    }
    const whole = { ...data, before: isoFromSerial(before) };
    report({ row, field, messageId: isListed ? "listed" : "closed", data: whole, suggestions });
  },
});
