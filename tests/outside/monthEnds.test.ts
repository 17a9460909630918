import * as formulas from "@formulajs/formulajs";
import fc from "fast-check";
import { addMonths } from "../../src/domain/dates/addMonths";
import { calendarOf } from "../../src/domain/dates/calendarOf";
import { dueDate } from "../../src/domain/loans/dueDate";
import { serialOf } from "./serialOf";

// EDATE and EOMONTH of OpenFormula 6.10.7 and 6.10.8 (section numbers from memory), as the library @formulajs/formulajs 4.6.1 computes them.
const someDay = fc.integer({ min: serialOf("1990-01-01"), max: serialOf("2060-12-31") });
const localDate = (serial: number): Date => {
  const utc = new Date((serial - 25569) * 86_400_000);
  return new Date(utc.getUTCFullYear(), utc.getUTCMonth(), utc.getUTCDate());
};
const serialOfDate = (date: Date): number =>
  Math.round(Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) / 86_400_000) + 25569;

describe("months against a general function library", () => {
  it("agree with EDATE, clipped at the month's end", () => {
    fc.assert(
      fc.property(someDay, fc.integer({ min: -24, max: 24 }), (day, months) => {
        expect(addMonths(day, months)).toBe(serialOfDate(formulas.EDATE(localDate(day), months) as unknown as Date));
      }),
    );
  });

  it("never pass the EOMONTH of the month they end in", () => {
    fc.assert(
      fc.property(someDay, fc.integer({ min: -24, max: 24 }), (day, months) => {
        const monthEnd = serialOfDate(formulas.EOMONTH(localDate(day), months) as unknown as Date);
        const dayOfMonth = localDate(day).getDate();
        expect(addMonths(day, months)).toBe(Math.min(monthEnd, monthEnd - localDate(monthEnd).getDate() + dayOfMonth));
      }),
    );
  });

  it("give as the month's end the EOMONTH of the day out", () => {
    fc.assert(
      fc.property(someDay, fc.constantFrom(0 as const, 1 as const), (out, monthsOn) => {
        const due = dueDate(out, { kind: "month end", monthsOn }, null, calendarOf(0), "none");
        expect(due.ok && due.value).toBe(serialOfDate(formulas.EOMONTH(localDate(out), monthsOn) as unknown as Date));
      }),
    );
  });
});
