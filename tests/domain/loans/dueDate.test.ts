import fc from "fast-check";
import { DateTime } from "luxon";
import { calendarOf } from "../../../src/domain/dates/calendarOf";
import { isoFromSerial } from "../../../src/domain/dates/isoFromSerial";
import { lastSerial } from "../../../src/domain/dates/lastSerial";
import { parseTerms } from "../../../src/domain/dates/terms/parseTerms";
import type { Terms } from "../../../src/domain/dates/terms/terms";
import { dueDate } from "../../../src/domain/loans/dueDate";
import type { Roll } from "../../../src/domain/loans/roll";
import { sayProblem } from "../../../src/domain/wording";
import { serialOf } from "../../outside/serialOf";

const MONDAY_TO_FRIDAY = 0b1100000;
// 2026-04-03 and 2026-04-06: Good Friday and Easter Monday, from the United Kingdom's published bank holidays.
const EASTER = ["2026-04-03", "2026-04-06"];

interface Case {
  readonly out?: string;
  readonly terms: string;
  readonly shoot?: string;
  readonly closed?: readonly string[];
  readonly roll?: Roll;
}

function dueOf({ out = "2026-03-02", terms, shoot, closed = [], roll }: Case): string {
  const parsed = parseTerms(terms);
  if (!parsed.ok) throw new Error(sayProblem(parsed.problem));
  const calendar = calendarOf(MONDAY_TO_FRIDAY, closed.map(serialOf));
  const due = dueDate(serialOf(out), parsed.value, shoot === undefined ? null : serialOf(shoot), calendar, roll);
  return due.ok ? isoFromSerial(due.value) : sayProblem(due.problem);
}

// 2026-03-02 is a Monday. Worked out on a wall calendar.
const CASES: readonly (readonly [title: string, given: Case, due: string])[] = [
  ["counts calendar days from the day out", { terms: "3 days" }, "2026-03-05"],
  ["moves calendar days that end on a Saturday back to Friday", { terms: "5 days" }, "2026-03-06"],
  ["moves them on when asked", { terms: "5 days", roll: "on" }, "2026-03-09"],
  ["leaves them when asked", { terms: "5 days", roll: "none" }, "2026-03-07"],
  [
    "moves back over a holiday and the weekend before it",
    { out: "2026-04-01", terms: "5 days", closed: EASTER },
    "2026-04-02",
  ],
  ["rolls on rather than back to the day out", { out: "2026-03-06", terms: "1 day" }, "2026-03-09"],
  ["rolls on rather than back before the day out", { out: "2026-03-07", terms: "1 day" }, "2026-03-09"],
  ["counts working days over the weekend", { out: "2026-03-06", terms: "1 working day" }, "2026-03-09"],
  ["counts working days over holidays", { out: "2026-04-01", terms: "3 working days", closed: EASTER }, "2026-04-08"],
  ["counts working days from a day out on a Saturday", { out: "2026-03-07", terms: "next working day" }, "2026-03-09"],
  [
    "counts working days after the shoot from the shoot as day 0",
    { terms: "5 working days after shoot", shoot: "2026-03-06" },
    "2026-03-13",
  ],
  [
    "counts from a shoot on a Sunday as day 0",
    { terms: "1 working day after wrap", shoot: "2026-03-08" },
    "2026-03-09",
  ],
  ["never goes back to the shoot day", { terms: "day after shoot", shoot: "2026-03-06" }, "2026-03-09"],
  ["keeps the same day on a closed day", { out: "2026-03-07", terms: "same day" }, "2026-03-07"],
  ["keeps 0 days as the same day", { out: "2026-03-07", terms: "0 days" }, "2026-03-07"],
  ["keeps a fixed day on a closed day", { terms: "by 2026-03-07" }, "2026-03-07"],
  ["keeps terms from a receipt on a closed day", { terms: "5 days from receipt" }, "2026-03-07"],
  ["counts 30 days of receipt from the day out", { terms: "within 30 days of receipt", roll: "on" }, "2026-04-01"],
  ["clips a month at the month's end", { out: "2026-01-31", terms: "1 month", roll: "none" }, "2026-02-28"],
  ["clips, then rolls back", { out: "2026-01-31", terms: "1 month" }, "2026-02-27"],
  ["takes the first such weekday after the day out", { terms: "COB Friday" }, "2026-03-06"],
  ["takes the next week's when the day out is that weekday", { out: "2026-03-06", terms: "Friday" }, "2026-03-13"],
  ["moves a weekday that is a holiday back", { out: "2026-04-01", terms: "Monday", closed: EASTER }, "2026-04-02"],
  ["takes the first Monday after wrap", { terms: "Mon after wrap", shoot: "2026-03-06" }, "2026-03-09"],
  ["takes the month's last working day", { out: "2026-05-04", terms: "EOM" }, "2026-05-29"],
  [
    "takes the last day of the month itself when not rolled",
    { out: "2026-05-04", terms: "EOM", roll: "none" },
    "2026-05-31",
  ],
  ["keeps the month's end that is the day out", { out: "2026-05-31", terms: "end of month" }, "2026-05-31"],
  ["takes the following month's end", { out: "2026-01-31", terms: "end of next month" }, "2026-02-27"],
];

describe("dueDate", () => {
  it.each(CASES)("%s", (_title, given, due) => expect(dueOf(given)).toBe(due));

  it("asks for the shoot day that the terms count from", () => {
    expect(dueOf({ terms: "5 working days after shoot" })).toBe(
      'shoot is blank; give the last shoot day, which "5 working days after the shoot" counts from.',
    );
  });

  it("has nothing to compute from without a day out, unless the terms do without it", () => {
    const calendar = calendarOf(MONDAY_TO_FRIDAY);
    const days = dueDate(null, { kind: "days", count: 7, from: "out" }, null, calendar);
    expect(days.ok ? null : days.problem.reason).toBe("nothing-to-compute");
    expect(dueDate(null, { kind: "date", day: 46086 }, null, calendar)).toEqual({ ok: true, value: 46086 });
    expect(dueDate(null, { kind: "days", count: 7, from: "shoot" }, 46080, calendar)).toEqual({
      ok: true,
      value: 46087,
    });
  });

  it("finds no day in a week with no open day, whatever the terms", () => {
    for (const terms of ["7 days", "3 working days", "same day", "by 2026-03-05"]) {
      const parsed = parseTerms(terms);
      const due = dueDate(46083, (parsed as { value: Terms }).value, null, calendarOf(0b1111111));
      expect(due.ok ? null : due.problem.reason).toBe("argument-not-usable");
    }
  });

  it("refuses a day after the last one a workbook can show", () => {
    for (const terms of ["7 days", "7 working days", "1 month", "end of next month"]) {
      const parsed = parseTerms(terms);
      const due = dueDate(lastSerial - 3, (parsed as { value: Terms }).value, null, calendarOf(MONDAY_TO_FRIDAY));
      expect(due.ok ? isoFromSerial(due.value) : due.problem.reason).toBe("argument-not-usable");
    }
  });

  const someDay = fc.integer({ min: 46000, max: 46400 });
  const someTerms: fc.Arbitrary<Exclude<Terms, { kind: "date" }>> = fc.oneof(
    fc.record({
      kind: fc.constantFrom("days" as const, "working days" as const),
      count: fc.integer({ min: 1, max: 40 }),
      from: fc.constantFrom("out" as const, "shoot" as const),
    }),
    fc.record({
      kind: fc.constant("months" as const),
      count: fc.integer({ min: 1, max: 12 }),
      from: fc.constant("out" as const),
    }),
    fc.record({
      kind: fc.constant("weekday" as const),
      weekday: fc.integer({ min: 0, max: 6 }),
      from: fc.constantFrom("out" as const, "shoot" as const),
    }),
    fc.record({ kind: fc.constant("month end" as const), monthsOn: fc.constantFrom(0 as const, 1 as const) }),
  );

  it("agrees with a day-by-day reading on luxon dates, for any terms, calendar and roll", () => {
    const epoch = DateTime.utc(1899, 12, 30);
    fc.assert(
      fc.property(
        someDay,
        someDay,
        someTerms,
        fc.integer({ min: 0, max: 126 }),
        fc.array(someDay, { maxLength: 30 }),
        fc.constantFrom<Roll>("back", "on", "none"),
        (out, shoot, terms, closedWeekdays, closed, roll) => {
          const isOpen = (day: DateTime): boolean =>
            ((closedWeekdays >> (day.weekday - 1)) & 1) === 0 &&
            !closed.includes(Math.round(day.diff(epoch, "days").days));
          const anchor = epoch.plus({ days: terms.kind !== "month end" && terms.from === "shoot" ? shoot : out });
          let day = anchor;
          if (terms.kind === "days") day = anchor.plus({ days: terms.count });
          else if (terms.kind === "months") day = anchor.plus({ months: terms.count });
          else if (terms.kind === "month end")
            day = anchor.startOf("month").plus({ months: terms.monthsOn }).endOf("month").startOf("day");
          else if (terms.kind === "weekday")
            do day = day.plus({ days: 1 });
            while (day.weekday - 1 !== terms.weekday);
          else for (let left = terms.count; left > 0;) if (isOpen((day = day.plus({ days: 1 })))) left--;
          if (terms.kind !== "working days" && roll !== "none" && !day.equals(anchor) && !isOpen(day)) {
            let rolled = day;
            if (roll === "back") while (!isOpen(rolled)) rolled = rolled.minus({ days: 1 });
            if (roll === "on" || rolled <= anchor)
              for (rolled = day; !isOpen(rolled);) rolled = rolled.plus({ days: 1 });
            day = rolled;
          }
          const due = dueDate(out, terms, shoot, calendarOf(closedWeekdays, closed), roll);
          expect(due.ok && isoFromSerial(due.value)).toBe(day.toISODate());
        },
      ),
      { numRuns: 1500 },
    );
  });
});
