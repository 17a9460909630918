import type { CheckedWorkbook } from "./checkedWorkbook";
import type { CheckFacts } from "./checkFacts";
import type { DayReading } from "./dayReading";
import type { LenderBook } from "./lenderBook";
import { lenderBookOf } from "./lenderBookOf";
import type { LookBook } from "./lookBook";
import { lookBookOf } from "./lookBookOf";
import { readDay } from "./readDay";

/** The facts of one run over a workbook, each worked out when a rule first asks for it. */
export function checkFactsOf(workbook: CheckedWorkbook, asOf: number): CheckFacts {
  let lenders: LenderBook | null | undefined;
  let looks: LookBook | null | undefined;
  const days = new Map<string, DayReading>();
  return {
    asOf,
    workbook,
    lenders: () => (lenders === undefined ? (lenders = lenderBookOf(workbook)) : lenders),
    looks: () => (looks === undefined ? (looks = lookBookOf(workbook)) : looks),
    day: (raw) => {
      if (typeof raw !== "string") return readDay(raw);
      // The same text stands in many rows, and four rules ask after it.
      let reading = days.get(raw);
      if (reading === undefined) days.set(raw, (reading = readDay(raw)));
      return reading;
    },
  };
}
