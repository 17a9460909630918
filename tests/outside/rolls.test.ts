import { calendarOf } from "../../src/domain/dates/calendarOf";
import { isoFromSerial } from "../../src/domain/dates/isoFromSerial";
import { dueDate } from "../../src/domain/loans/dueDate";
import type { Roll } from "../../src/domain/loans/roll";
import { serialOf } from "./serialOf";
import conventions from "./businessDayConventions.json";

// Business day conventions as cited from the ISDA 2006 Definitions, 4.12, with the examples of an open library's tests.
const CONVENTION_OF_ROLL: Readonly<Record<Roll, keyof typeof conventions.examples>> = {
  none: "NoAdjust",
  on: "Following",
  back: "Preceding",
};

describe.each(Object.entries(CONVENTION_OF_ROLL) as [Roll, keyof typeof conventions.examples][])(
  "rolling %s against the business day convention %s",
  (roll, convention) => {
    it.each(conventions.examples[convention] as [string, string][])("moves %s to %s", (date, adjusted) => {
      // Ten days earlier, so that rolling back stays clear of the day counted from.
      const terms = { kind: "days", count: 10, from: "out" } as const;
      const due = dueDate(serialOf(date) - 10, terms, null, calendarOf(0b1100000), roll);
      expect(due.ok && isoFromSerial(due.value)).toBe(adjusted);
    });
  },
);
