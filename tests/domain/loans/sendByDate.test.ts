import fc from "fast-check";
import { calendarOf } from "../../../src/domain/dates/calendarOf";
import { isoFromSerial } from "../../../src/domain/dates/isoFromSerial";
import { sendByDate } from "../../../src/domain/loans/sendByDate";
import { serialOf } from "../../outside/serialOf";

const calendar = calendarOf(0b1100000, ["2026-04-03", "2026-04-06"].map(serialOf));

function sendBy(due: string, transitDays: number, prepDays: number): string {
  const sent = sendByDate(serialOf(due), transitDays, prepDays, calendar);
  return sent.ok ? isoFromSerial(sent.value) : sent.problem.reason;
}

describe("sendByDate", () => {
  it.each([
    ["counts transit back from the day due", "2026-03-12", 2, 0, "2026-03-10"],
    ["counts preparing before transit", "2026-03-12", 2, 1, "2026-03-09"],
    ["passes over the weekend", "2026-03-09", 1, 0, "2026-03-06"],
    ["first moves a due day on a Sunday to the Friday before", "2026-03-15", 0, 0, "2026-03-13"],
    ["then counts from there", "2026-03-15", 1, 0, "2026-03-12"],
    ["first moves a due day on a holiday to the working day before", "2026-04-06", 1, 0, "2026-04-01"],
    ["is the day due itself when nothing lies between", "2026-03-12", 0, 0, "2026-03-12"],
  ] as const)("%s", (_title, due, transit, prep, sent) => expect(sendBy(due, transit, prep)).toBe(sent));

  it("leaves exactly the working days asked for between the day sent and the day due, and is itself a working day", () => {
    const someDay = fc.integer({ min: 46000, max: 46300 });
    fc.assert(
      fc.property(
        someDay,
        fc.integer({ min: 0, max: 15 }),
        fc.integer({ min: 0, max: 15 }),
        fc.integer({ min: 0, max: 126 }),
        fc.array(someDay, { maxLength: 20 }),
        (due, transit, prep, closedWeekdays, closed) => {
          const isOpen = (day: number): boolean =>
            ((closedWeekdays >> ((day + 5) % 7)) & 1) === 0 && !closed.includes(day);
          const sent = sendByDate(due, transit, prep, calendarOf(closedWeekdays, closed));
          if (!sent.ok) throw new Error(sent.problem.reason);
          let workingDaysAfter = 0;
          for (let day = sent.value + 1; day <= due; day++) if (isOpen(day)) workingDaysAfter++;
          expect([isOpen(sent.value), workingDaysAfter]).toEqual([true, transit + prep]);
        },
      ),
    );
  });

  it("has nothing to compute from without a due day", () => {
    const sent = sendByDate(null, 1, 0, calendar);
    expect(sent.ok ? null : sent.problem.reason).toBe("nothing-to-compute");
  });

  it("refuses a week with no open day, and days that begin before 1900", () => {
    const never = sendByDate(46083, 1, 0, calendarOf(0b1111111));
    expect(never.ok ? null : never.problem.facts).toMatchObject({ argument: "weekend" });
    const early = sendByDate(46083, 1e9, 0, calendar);
    expect(early.ok ? null : early.problem.facts).toMatchObject({ argument: "transit" });
  });
});
